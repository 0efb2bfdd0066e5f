package org.brakewright.kernel.clutch;

/**
 * A coned disc spring pressed at its edges.
 *
 * <p>F = pi E t s ln(R/r) ((h - s)(h - s/2) + t^2) / (6 (1 - nu^2) (R - r)^2): the section turns without bending, and the
 * hoop strains resist. Above h = t sqrt(2) the force has a peak and then falls. Source: J. O. Almen and A. Laszlo, The
 * Uniform-Section Disk Spring, Transactions of the ASME 58 (1936).
 *
 * @param outerRadius m
 * @param innerRadius m
 * @param thickness m
 * @param coneHeight free height of the cone, without the thickness, m
 * @param youngsModulus Pa
 * @param poissonRatio 0 to below 0.5
 */
public record BellevilleSpring(
        double outerRadius,
        double innerRadius,
        double thickness,
        double coneHeight,
        double youngsModulus,
        double poissonRatio) {
    public BellevilleSpring {
        Demand.positive("innerRadius", innerRadius);
        Demand.within("outerRadius", outerRadius, outerRadius > innerRadius, "more than innerRadius");
        Demand.positive("thickness", thickness);
        Demand.notNegative("coneHeight", coneHeight);
        Demand.positive("youngsModulus", youngsModulus);
        Demand.within("poissonRatio", poissonRatio, poissonRatio >= 0 && poissonRatio < 0.5, "0 to below 0.5");
    }

    /** Force (N) at a deflection (m) from the free cone. */
    public double force(double deflection) {
        double cone = (coneHeight - deflection) * (coneHeight - deflection / 2);
        double width = outerRadius - innerRadius;
        double rigidity = Math.PI * youngsModulus * thickness * Math.log(outerRadius / innerRadius);
        return rigidity
                * deflection
                * (cone + thickness * thickness)
                / (6 * (1 - poissonRatio * poissonRatio) * width * width);
    }
}
