/** How stops are driven on the computer, as written. */
@NullMarked
package org.brakewright.model.stop;

import org.jspecify.annotations.NullMarked;
