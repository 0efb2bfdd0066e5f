/** From the pushrod to the wheel: masters, balance bar, booster, valve, lines, fluid. */
@NullMarked
package org.brakewright.model.hydraulics;

import org.jspecify.annotations.NullMarked;
