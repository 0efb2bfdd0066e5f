package org.brakewright.kernel.friction;

/**
 * What it takes to hold a standing car on a grade; the same uphill and downhill, since only the slope pulls.
 *
 * @param weight N
 * @param angle slope against the horizontal, rad, from 0 to below pi/2
 */
public record GradeHold(double weight, double angle) {
    public GradeHold {
        Require.positive("weight", weight);
        Require.notNegative("angle", angle);
        Require.that(angle < Math.PI / 2, "angle", angle, "must be below pi/2 rad");
    }

    /** From a grade as a fraction, rise over horizontal run: 0.20 for a 20 % grade. */
    public static GradeHold onGrade(double weight, double grade) {
        Require.notNegative("grade", grade);
        return new GradeHold(weight, Math.atan(grade));
    }

    /** Force along the road that the tires must supply together, N. */
    public double forceNeeded() {
        return weight * Math.sin(angle);
    }

    /** Torque at each of so many braked wheels of a rolling radius in m, N m. */
    public double torquePerWheel(int brakedWheels, double rollingRadius) {
        Require.positive("brakedWheels", brakedWheels);
        Require.positive("rollingRadius", rollingRadius);
        return forceNeeded() * rollingRadius / brakedWheels;
    }

    /** Steepest slope, rad, that a holding force in N keeps; pi/2 when the force carries the whole weight. */
    public static double steepestAngle(double weight, double holdingForce) {
        Require.positive("weight", weight);
        Require.notNegative("holdingForce", holdingForce);
        return Math.asin(Math.min(1, holdingForce / weight));
    }
}
