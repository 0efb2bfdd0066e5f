/** Command line and local web server: thin, no rule of its own. Start at {@link org.brakewright.app.Main}. */
@NullMarked
package org.brakewright.app;

import org.jspecify.annotations.NullMarked;
