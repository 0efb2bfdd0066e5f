package org.brakewright.kernel.dynamics;

import java.util.OptionalDouble;

/**
 * A brake system that gives the rear axle a fixed share of the whole braking force.
 *
 * <p>Source: R. Limpert, Brake Design and Safety, ch. 7; A. Day, Braking of Road Vehicles, ch. 3 (from memory).
 */
public final class FixedSplit {
    private FixedSplit() {}

    /**
     * Deceleration over g at which both axles lock together; below it the front locks first, above it the rear.
     *
     * @param rearForceShare share of the rear axle in the whole braking force, 0 to 1
     * @param loads the car
     * @return zero or negative when the rear locks first on any road
     */
    public static double criticalDecelerationG(double rearForceShare, AxleLoads loads) {
        Require.fraction("rearForceShare", rearForceShare);
        return (loads.rearStaticShare() - rearForceShare) / loads.heightRatio();
    }

    /** Share of the rear axle that makes both axles lock together at a deceleration over g. */
    public static double rearForceShareFor(double criticalDecelerationG, AxleLoads loads) {
        return loads.rear(criticalDecelerationG) / loads.weight();
    }

    /**
     * Deceleration over grip when the front wheels are about to lock; above 1 when the rear locks before.
     *
     * @return empty when the load that braking brings outruns the front brakes, so that they never lock
     */
    public static OptionalDouble frontLimitedEfficiency(double rearForceShare, AxleLoads loads, double grip) {
        Require.fraction("rearForceShare", rearForceShare);
        Require.positive("grip", grip);
        double need = 1 - rearForceShare - grip * loads.heightRatio();
        return need > 0 ? OptionalDouble.of((1 - loads.rearStaticShare()) / need) : OptionalDouble.empty();
    }

    /** Deceleration over grip when the rear wheels are about to lock; above 1 when the front locks before. */
    public static double rearLimitedEfficiency(double rearForceShare, AxleLoads loads, double grip) {
        Require.fraction("rearForceShare", rearForceShare);
        Require.positive("grip", grip);
        return loads.rearStaticShare() / (rearForceShare + grip * loads.heightRatio());
    }
}
