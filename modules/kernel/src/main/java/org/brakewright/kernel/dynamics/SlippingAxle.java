package org.brakewright.kernel.dynamics;

/**
 * The wheels of an axle that may slip, taken as one.
 *
 * @param rollingRadius m
 * @param inertia moment of inertia of both wheels with what turns with them, kg m2
 * @param tires what they hold at most under a load
 * @param curve how that depends on slip
 */
public record SlippingAxle(double rollingRadius, double inertia, LoadSensitiveGrip tires, SlipCurve curve) {
    public SlippingAxle {
        Require.positive("rollingRadius", rollingRadius);
        Require.positive("inertia", inertia);
    }

    /** Slip at a road speed (m/s, above zero) and a turning speed (rad/s): 0 rolls freely, 1 is locked. */
    public double slip(double speed, double turning) {
        return 1 - turning * rollingRadius / speed;
    }

    /** Force along the road, N, backward when it slows the car, under a load in N. */
    public double force(double slip, double load) {
        return curve.share(slip) * tires.force(load);
    }

    /** How fast the wheels' turning changes, rad/s2, between a force at the road in N and a brake torque in N m. */
    public double turningRate(double force, double brakeTorque) {
        return (force * rollingRadius - brakeTorque) / inertia;
    }
}
