package org.brakewright.kernel.friction;

/**
 * Radius at which the friction force of a ring-sector pad (or clutch ring) acts.
 *
 * <p>A new, stiff pad presses evenly; a bedded pad wears until pressure times radius is even. Source: Shigley's Mechanical
 * Engineering Design, ch. 16 (from memory).
 */
public final class EffectiveRadius {
    private EffectiveRadius() {}

    /** Mean radius (ro + ri)/2, m, for a bedded pad between two radii in m. */
    public static double uniformWear(double innerRadius, double outerRadius) {
        requireRing(innerRadius, outerRadius);
        return (outerRadius + innerRadius) / 2;
    }

    /** 2 (ro^3 - ri^3) / (3 (ro^2 - ri^2)), m, for a pad that presses evenly between two radii in m. */
    public static double uniformPressure(double innerRadius, double outerRadius) {
        requireRing(innerRadius, outerRadius);
        // (ro^3 - ri^3)/(ro^2 - ri^2) with the common factor ro - ri taken out: exact for narrow rings too.
        double squares = outerRadius * outerRadius + outerRadius * innerRadius + innerRadius * innerRadius;
        return 2 * squares / (3 * (outerRadius + innerRadius));
    }

    private static void requireRing(double innerRadius, double outerRadius) {
        Require.notNegative("innerRadius", innerRadius);
        Require.positive("outerRadius", outerRadius);
        Require.that(innerRadius < outerRadius, "innerRadius", innerRadius, "must be below outerRadius " + outerRadius);
    }
}
