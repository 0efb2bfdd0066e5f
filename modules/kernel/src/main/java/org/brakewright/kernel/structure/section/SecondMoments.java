package org.brakewright.kernel.structure.section;

/**
 * Second moments of area about the centroid.
 *
 * @param y of z squared: bending in the x-z plane, m4
 * @param z of y squared: bending in the x-y plane, m4
 * @param product of y times z, m4; zero when y or z is an axis of symmetry
 */
public record SecondMoments(double y, double z, double product) {
    public SecondMoments {
        Require.positive("y", y);
        Require.positive("z", z);
        Require.that(product * product < y * z, "product", product, "must be less than the mean of y and z");
    }

    /** The least second moment about any axis through the centroid, m4. */
    public double least() {
        return (y + z) / 2 - Math.hypot((y - z) / 2, product);
    }
}
