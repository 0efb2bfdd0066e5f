package org.brakewright.kernel.dynamics;

/**
 * The moment at which the first axle locks.
 *
 * @param first which axle locks first
 * @param decelerationG deceleration over g reached at that moment
 * @param efficiency that deceleration over the grip, up to 1
 */
public record LockPoint(First first, double decelerationG, double efficiency) {
    /** Which axle. */
    public enum First {
        FRONT,
        REAR,
        /** Both at once, to rounding. */
        BOTH
    }

    public LockPoint {
        Require.positive("decelerationG", decelerationG);
        Require.positive("efficiency", efficiency);
        Require.fraction("efficiency", efficiency);
    }
}
