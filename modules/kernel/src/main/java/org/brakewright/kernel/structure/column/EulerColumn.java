package org.brakewright.kernel.structure.column;

/**
 * A straight bar pressed along its axis until it bows.
 *
 * <p>Sources: R. C. Hibbeler, Mechanics of Materials, chapter 13; the parabola for stubby columns is J. B. Johnson's,
 * Shigley's Mechanical Engineering Design, section 4-13 (from memory).
 *
 * @param secondMoment about the axis it bows about, m4
 * @param area m2
 * @param effectiveLength length times the factor of the ends, m
 * @param young modulus, Pa
 */
public record EulerColumn(double secondMoment, double area, double effectiveLength, double young) {
    public EulerColumn {
        Require.positive("secondMoment", secondMoment);
        Require.positive("area", area);
        Require.positive("effectiveLength", effectiveLength);
        Require.positive("young", young);
    }

    /** The load at which a slender column bows, N. */
    public double criticalLoad() {
        return Math.PI * Math.PI * young * secondMoment / (effectiveLength * effectiveLength);
    }

    /**
     * The load at which a column of a material that yields fails, N: Euler's for slender ones, the parabola that meets
     * it at half the yield stress for stubby ones.
     *
     * @param yield Pa
     */
    public double failureLoad(double yield) {
        Require.positive("yield", yield);
        double euler = criticalLoad() / area;
        return area * (euler <= yield / 2 ? euler : yield - yield * yield / (4 * euler));
    }
}
