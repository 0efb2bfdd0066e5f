/** Laws of rubbing brakes: what a wheel brake makes of its pressure or its cable, in SI units. */
@NullMarked
package org.brakewright.kernel.friction;

import org.jspecify.annotations.NullMarked;
