package org.brakewright.analysis.failure;

import java.util.List;

/**
 * What is left with one thing failed, or weak.
 *
 * @param what failed
 * @param pedalForceN push at the pad
 * @param livePressurePa pressure in the circuit that still works (the front's when the booster failed or the brakes fade)
 * @param decelerationG the least over the load cases, with the live wheels turning or at the tyres' grip
 * @param loadCase the load case of that least deceleration
 * @param gripLimited whether the live axle locks before the push is used up
 * @param pedalTravelM at the pad
 * @param pedalFallM how much further the pedal goes than with everything working at the same push
 * @param reachesStop whether the pedal meets its stop before the push is used up; what it gives there is what is reported
 * @param bar where the balance bar ends
 * @param bottomed whether the failed circuit's piston stands at the end of its stroke
 * @param shareOfWhole brake force over that of the whole car at the same push, wheels turning
 * @param effortFor pushes for what published rules ask of such a car; empty where only judging is wanted
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
        BarEnd bar,
        boolean bottomed,
        double shareOfWhole,
        List<EffortToMeet> effortFor) {

    /** A failure that leaves pedal and bar where they are. */
    static Failure pedalStays(What what, double push, Remaining left, LeastDeceleration least, double shareOfWhole) {
        return new Failure(
                what,
                push,
                left.pushed().state().frontPressure(),
                least.decelerationG(),
                least.loadCase(),
                least.gripLimited(),
                left.pushed().padTravel(),
                0,
                left.reachesStop(),
                BarEnd.NONE,
                false,
                shareOfWhole,
                List.of());
    }

    /** The same failure with the pushes for what rules ask. */
    Failure withEffortFor(List<EffortToMeet> efforts) {
        return new Failure(
                what,
                pedalForceN,
                livePressurePa,
                decelerationG,
                loadCase,
                gripLimited,
                pedalTravelM,
                pedalFallM,
                reachesStop,
                bar,
                bottomed,
                shareOfWhole,
                efforts);
    }

    /** What failed. */
    public enum What {
        FRONT_CIRCUIT,
        REAR_CIRCUIT,
        /** Left front and right rear wheel of a diagonal split. */
        FIRST_DIAGONAL,
        /** Right front and left rear wheel of a diagonal split. */
        SECOND_DIAGONAL,
        BOOSTER,
        /** Air in the front circuit. */
        AIR_IN_FRONT_CIRCUIT,
        AIR_IN_REAR_CIRCUIT,
        AIR_IN_FIRST_DIAGONAL,
        AIR_IN_SECOND_DIAGONAL,
        /** Pads and linings hot. */
        FADE
    }

    /** Where the bar ends up. */
    public enum BarEnd {
        /** There is no bar, or it does not come to an end. */
        NONE,
        /** The failed side's master is at the end of its stroke and the bar leans on it. */
        LEANS_ON_BOTTOMED_MASTER,
        /** The bar reaches its tilt limit first and binds: the live master is pushed by a bound bar. */
        BINDS_AT_TILT_LIMIT
    }
}
