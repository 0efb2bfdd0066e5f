package org.brakewright.analysis.balance;

/**
 * Which axle locks first at one grip.
 *
 * @param grip tyre grip
 * @param axle the axle whose wheels lock first
 * @param decelerationG deceleration at which they do, g
 * @param efficiency that deceleration over the grip
 */
public record Lock(double grip, Axle axle, double decelerationG, double efficiency) {

    /** Axle that locks. */
    public enum Axle {
        FRONT,
        REAR,
        /** Both within one part in ten thousand of the deceleration. */
        BOTH
    }
}
