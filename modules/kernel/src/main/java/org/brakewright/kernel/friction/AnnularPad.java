package org.brakewright.kernel.friction;

/**
 * One pad whose face is a sector of a ring.
 *
 * <p>Source: Shigley's Mechanical Engineering Design, ch. 16, caliper brakes (from memory). A closed ring (angle 2 pi) is a
 * clutch face.
 *
 * @param innerRadius m
 * @param outerRadius m
 * @param angle angle the pad subtends at the axle, rad, up to 2 pi
 */
public record AnnularPad(double innerRadius, double outerRadius, double angle) {
    public AnnularPad {
        Require.positive("innerRadius", innerRadius);
        Require.positive("outerRadius", outerRadius);
        Require.that(innerRadius < outerRadius, "innerRadius", innerRadius, "must be below outerRadius " + outerRadius);
        Require.that(angle > 0 && angle <= 2 * Math.PI, "angle", angle, "must lie above 0 and up to 2 pi rad");
    }

    /** Area of the face, m2. */
    public double area() {
        return angle / 2 * (outerRadius * outerRadius - innerRadius * innerRadius);
    }

    /** Radius at which the friction force acts, m. */
    public double effectiveRadius(PadContact contact) {
        return switch (contact) {
            case UNIFORM_WEAR -> EffectiveRadius.uniformWear(innerRadius, outerRadius);
            case UNIFORM_PRESSURE -> EffectiveRadius.uniformPressure(innerRadius, outerRadius);
        };
    }

    /** Force on the back of the pad, N, at a greatest face pressure in Pa. */
    public double force(PadContact contact, double greatestPressure) {
        return greatestPressure * forcePerPressure(contact);
    }

    /** Greatest face pressure, Pa, under a force on the back of the pad in N. */
    public double greatestPressure(PadContact contact, double force) {
        return force / forcePerPressure(contact);
    }

    /** Torque of this one face, N m, under a force in N. */
    public double torque(PadContact contact, double force, double friction) {
        return friction * force * effectiveRadius(contact);
    }

    /**
     * Distance from the axle at which the caliper should press so that the pad does not tip, m: the center of the
     * pressure, which lies inside the effective radius because the pad is curved.
     */
    public double pressureCenter(PadContact contact) {
        double half = angle / 2;
        return effectiveRadius(contact) * Math.sin(half) / half;
    }

    private double forcePerPressure(PadContact contact) {
        return switch (contact) {
            case UNIFORM_WEAR -> angle * innerRadius * (outerRadius - innerRadius);
            case UNIFORM_PRESSURE -> area();
        };
    }
}
