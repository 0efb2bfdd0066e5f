package org.brakewright.kernel.dynamics;

/**
 * A wheel that still rolls: brake torque against force at the road.
 *
 * @param rollingRadius m
 */
public record RollingWheel(double rollingRadius) {
    public RollingWheel {
        Require.positive("rollingRadius", rollingRadius);
    }

    /** Braking force at the road, N, from a brake torque in N m. */
    public double force(double torque) {
        return torque / rollingRadius;
    }

    /** Brake torque, N m, that holds a force at the road in N. */
    public double torque(double force) {
        return force * rollingRadius;
    }

    /** Turning speed, rad/s, at a road speed in m/s. */
    public double turningSpeed(double speed) {
        return speed / rollingRadius;
    }

    /** Mass, kg, that the wheel's moment of inertia in kg m2 adds to the car when it is slowed. */
    public double equivalentMass(double inertia) {
        return inertia / (rollingRadius * rollingRadius);
    }
}
