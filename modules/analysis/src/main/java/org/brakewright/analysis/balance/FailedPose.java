package org.brakewright.analysis.balance;

import org.brakewright.kernel.lever.FailedBar;

/**
 * How a balance bar stands with one circuit open, as if the pedal had room for it.
 *
 * @param pose of the bar
 * @param end what ends the run of the failed rod
 * @param padTravelM of the pad from its free position
 * @param pastPedalStop whether the pedal meets its stop before: then the bar does not get as far
 */
public record FailedPose(BarPose pose, FailedBar.Stop end, double padTravelM, boolean pastPedalStop) {

    /** Whether the bar ends at its largest tilt, not by the failed master. */
    public boolean binds() {
        return end == FailedBar.Stop.ARTICULATION;
    }
}
