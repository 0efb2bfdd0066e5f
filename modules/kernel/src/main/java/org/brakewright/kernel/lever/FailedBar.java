package org.brakewright.kernel.lever;

/**
 * Where a balance bar ends up when one circuit holds no pressure.
 *
 * @param frontTravel of the front clevis, m
 * @param rearTravel of the rear clevis, m
 * @param bearingTravel of the bearing, m
 * @param tilt plus when the front clevis is ahead, rad
 * @param liveShare of the push that the live circuit gets, 0 to 1
 * @param stop what ended the failed rod's run
 */
public record FailedBar(
        double frontTravel, double rearTravel, double bearingTravel, double tilt, double liveShare, Stop stop) {

    /** What ended the failed rod's run. */
    public enum Stop {
        /** The bar reached its largest tilt and turned no further. */
        ARTICULATION,
        /** The failed master's piston reached the end of its bore. */
        MASTER_BOTTOMED
    }
}
