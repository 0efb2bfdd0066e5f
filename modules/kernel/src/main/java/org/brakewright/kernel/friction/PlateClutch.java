package org.brakewright.kernel.friction;

/**
 * A clutch of flat rings: what it carries under a clamp force.
 *
 * <p>T = n mu P r_e with the effective radius of a ring. A bedded clutch presses by uniform wear, which carries less and
 * stands on the safe side; a new one by uniform pressure. Source: V. B. Bhandari, Design of Machine Elements, ch. 11.
 *
 * @param faces that rub: two for a plate between flywheel and pressure plate
 * @param friction of the facings
 * @param innerRadius of the ring, m
 * @param outerRadius of the ring, m
 */
public record PlateClutch(int faces, double friction, double innerRadius, double outerRadius) {
    public PlateClutch {
        Require.positive("faces", faces);
        Require.positive("friction", friction);
        Require.positive("outerRadius", outerRadius);
        Require.that(
                innerRadius > 0 && innerRadius < outerRadius,
                "innerRadius",
                innerRadius,
                "must be above 0 and below outerRadius " + outerRadius);
    }

    /** Radius (m) at which the friction acts. */
    public double effectiveRadius(PadContact contact) {
        return switch (contact) {
            case UNIFORM_WEAR -> EffectiveRadius.uniformWear(innerRadius, outerRadius);
            case UNIFORM_PRESSURE -> EffectiveRadius.uniformPressure(innerRadius, outerRadius);
        };
    }

    /** Torque (N m) that a clamp force (N) carries before it slips. */
    public double torque(double clampForce, PadContact contact) {
        return faces * friction * clampForce * effectiveRadius(contact);
    }

    /** Clamp force (N) that carries a torque (N m). */
    public double clampForce(double torque, PadContact contact) {
        return torque / (faces * friction * effectiveRadius(contact));
    }

    /** Clamp force (N) at which the greatest pressure on the facing reaches a figure (Pa). */
    public double clampForceAtPressure(double greatest, PadContact contact) {
        double width = outerRadius - innerRadius;
        return switch (contact) {
            case UNIFORM_WEAR -> 2 * Math.PI * greatest * innerRadius * width;
            case UNIFORM_PRESSURE -> Math.PI * greatest * width * (outerRadius + innerRadius);
        };
    }

    /** Greatest pressure (Pa) on the facing under a clamp force (N). */
    public double greatestPressure(double clampForce, PadContact contact) {
        return clampForce / clampForceAtPressure(1, contact);
    }
}
