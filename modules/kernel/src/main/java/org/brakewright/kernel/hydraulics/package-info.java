/** Laws of liquid under pressure: masters, boosters, valves, lines, hoses and the volume that each takes up. */
@NullMarked
package org.brakewright.kernel.hydraulics;

import org.jspecify.annotations.NullMarked;
