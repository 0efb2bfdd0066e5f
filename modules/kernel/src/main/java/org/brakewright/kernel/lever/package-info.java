/** Laws of levers and rods: the pedal as a mechanism, and the bar that splits its push. */
@NullMarked
package org.brakewright.kernel.lever;

import org.jspecify.annotations.NullMarked;
