package org.brakewright.kernel.dynamics;

/** Which axle of a car with a fixed split locks first, and at what deceleration; the closed forms of {@link FixedSplit}. */
public final class WheelLock {
    /** Two lock points closer than this, relative, count as one. */
    private static final double SAME = 1e-12;

    private WheelLock() {}

    /**
     * The first lock on a road of given grip.
     *
     * @param rearForceShare share of the rear axle in the whole braking force, 0 to 1
     * @param loads the car
     * @param grip greatest friction coefficient between tire and road, the same at both axles
     */
    public static LockPoint fixedSplit(double rearForceShare, AxleLoads loads, double grip) {
        double rear = FixedSplit.rearLimitedEfficiency(rearForceShare, loads, grip);
        double front =
                FixedSplit.frontLimitedEfficiency(rearForceShare, loads, grip).orElse(Double.POSITIVE_INFINITY);
        // One of the two is never above 1 but for rounding.
        double efficiency = Math.min(1, Math.min(front, rear));
        return new LockPoint(first(front, rear), efficiency * grip, efficiency);
    }

    private static LockPoint.First first(double front, double rear) {
        if (Math.abs(front - rear) <= SAME * rear) {
            return LockPoint.First.BOTH;
        }
        return front < rear ? LockPoint.First.FRONT : LockPoint.First.REAR;
    }
}
