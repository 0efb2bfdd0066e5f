/** How far convex bodies lie apart, standing still and swinging. */
@NullMarked
package org.brakewright.kernel.gap;

import org.jspecify.annotations.NullMarked;
