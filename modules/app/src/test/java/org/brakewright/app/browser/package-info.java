/** Tests of the page in a real browser. */
@NullMarked
package org.brakewright.app.browser;

import org.jspecify.annotations.NullMarked;
