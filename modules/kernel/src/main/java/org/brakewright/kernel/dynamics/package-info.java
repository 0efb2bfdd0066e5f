/** Laws of the braked car as a whole: axle loads, balance, lock order, stopping distance, in SI units. */
@NullMarked
package org.brakewright.kernel.dynamics;

import org.jspecify.annotations.NullMarked;
