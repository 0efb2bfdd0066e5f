package org.brakewright.kernel.dynamics;

/**
 * The second weighing for the height of the center of gravity: one axle raised, wheels free to roll, springs blocked.
 *
 * @param raised which axle was raised
 * @param rise how far its wheel centers went up, m
 * @param lowerAxleLoad load on the other axle meanwhile, N
 */
public record AxleLift(Raised raised, double rise, double lowerAxleLoad) {
    /** Which axle. */
    public enum Raised {
        FRONT,
        REAR
    }

    public AxleLift {
        Require.positive("rise", rise);
        Require.positive("lowerAxleLoad", lowerAxleLoad);
    }
}
