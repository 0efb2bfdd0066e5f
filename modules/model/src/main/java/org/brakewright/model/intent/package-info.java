/** What the builder wants, and whose rules they answer to. */
@NullMarked
package org.brakewright.model.intent;

import org.jspecify.annotations.NullMarked;
