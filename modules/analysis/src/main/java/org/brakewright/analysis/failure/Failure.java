package org.brakewright.analysis.failure;

/**
 * What is left with one thing failed.
 *
 * @param what failed
 * @param pedalForceN push at the pad
 * @param livePressurePa pressure in the circuit that still works (the front's when the booster failed)
 * @param decelerationG the least over the load cases, with the live wheels turning or at the tyres' grip
 * @param loadCase the load case of that least deceleration
 * @param gripLimited whether the live axle locks before the push is used up
 * @param pedalTravelM at the pad
 * @param pedalFallM how much further the pedal goes than with everything working at the same push
 * @param reachesStop whether the pedal meets its stop before the push is used up; what it gives there is what is reported
 * @param bar where the balance bar ends
 */
public record Failure(
        What what,
        double pedalForceN,
        double livePressurePa,
        double decelerationG,
        String loadCase,
        boolean gripLimited,
        double pedalTravelM,
        double pedalFallM,
        boolean reachesStop,
        BarEnd bar) {

    /** What failed. */
    public enum What {
        FRONT_CIRCUIT,
        REAR_CIRCUIT,
        /** Left front and right rear wheel of a diagonal split. */
        FIRST_DIAGONAL,
        /** Right front and left rear wheel of a diagonal split. */
        SECOND_DIAGONAL,
        BOOSTER
    }

    /** Where the bar ends up. */
    public enum BarEnd {
        /** There is no bar. */
        NONE,
        /** The failed side's master is at the end of its stroke and the bar leans on it. */
        LEANS_ON_BOTTOMED_MASTER,
        /** The bar reaches its tilt limit first and binds: the live master is pushed by a bound bar. */
        BINDS_AT_TILT_LIMIT
    }
}
