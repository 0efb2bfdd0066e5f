package org.brakewright.kernel.dynamics;

/**
 * Greatest deceleration with only one axle braked, as after a circuit failure, at full use of the grip.
 *
 * <p>Source: T. Bevan, The Theory of Machines, ch. 8. Never above the deceleration at which the rear wheels leave the road.
 */
public final class OneAxleBraked {
    private OneAxleBraked() {}

    /** Deceleration over g with only the front wheels braked, on a road of given grip. */
    public static double frontOnly(AxleLoads loads, double grip) {
        Require.positive("grip", grip);
        if (grip >= loads.liftOffDecelerationG()) {
            return loads.liftOffDecelerationG();
        }
        return grip * (1 - loads.rearStaticShare()) / (1 - grip * loads.heightRatio());
    }

    /** Deceleration over g with only the rear wheels braked, on a road of given grip. */
    public static double rearOnly(AxleLoads loads, double grip) {
        Require.positive("grip", grip);
        return grip * loads.rearStaticShare() / (1 + grip * loads.heightRatio());
    }

    /** Deceleration over g with every wheel at its limit, on a road of given grip. */
    public static double allWheels(AxleLoads loads, double grip) {
        Require.positive("grip", grip);
        return Math.min(grip, loads.liftOffDecelerationG());
    }
}
