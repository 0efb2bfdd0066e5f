/** How hot the brakes get on each schedule, and what is left of them then. Start at {@link org.brakewright.analysis.heat.HeatStates}. */
@NullMarked
package org.brakewright.analysis.heat;

import org.jspecify.annotations.NullMarked;
