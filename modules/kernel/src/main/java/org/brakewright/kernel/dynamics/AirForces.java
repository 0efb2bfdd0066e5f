package org.brakewright.kernel.dynamics;

/**
 * What the air does to a car at one speed; it grows with the square of the speed.
 *
 * @param front load that it adds to the front axle, N; minus is lift
 * @param rear load that it adds to the rear axle, N
 * @param drag N
 */
public record AirForces(double front, double rear, double drag) {
    /** A car that stands. */
    public static final AirForces NONE = new AirForces(0, 0, 0);

    public AirForces {
        Require.finite("front", front);
        Require.finite("rear", rear);
        Require.notNegative("drag", drag);
    }

    /** The forces at another speed; both speeds in m/s. */
    public AirForces at(double speed, double knownAtSpeed) {
        Require.notNegative("speed", speed);
        Require.positive("knownAtSpeed", knownAtSpeed);
        double ratio = speed / knownAtSpeed;
        double factor = ratio * ratio;
        return new AirForces(front * factor, rear * factor, drag * factor);
    }
}
