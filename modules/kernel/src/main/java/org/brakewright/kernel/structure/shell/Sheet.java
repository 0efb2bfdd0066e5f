package org.brakewright.kernel.structure.shell;

/**
 * Sheet of one material, the same in all directions.
 *
 * @param thickness m
 * @param young modulus, Pa
 * @param poisson ratio
 */
public record Sheet(double thickness, double young, double poisson) {
    public Sheet {
        Require.positive("thickness", thickness);
        Require.positive("young", young);
        Require.that(poisson >= 0 && poisson < 0.5, "poisson", poisson, "must lie from 0 to below 0.5");
    }

    /** Stress from strain in the plane, by rows: both direct components and shear; Pa. */
    double[] planeStress() {
        double e = young / (1 - poisson * poisson);
        return new double[] {e, poisson * e, 0, poisson * e, e, 0, 0, 0, e * (1 - poisson) / 2};
    }
}
