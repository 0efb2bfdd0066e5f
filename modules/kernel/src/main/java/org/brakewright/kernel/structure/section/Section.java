package org.brakewright.kernel.structure.section;

import java.util.List;

/**
 * What bending, tension and torsion see of a bar. Axes through the centroid: y across, z up.
 *
 * @param area m2
 * @param bending second moments of area
 * @param torsionConstant torque over twist per length and shear modulus, m4
 * @param torsionModulus torque over the greatest shear stress it makes, m3
 * @param fibres where bending stress may be greatest
 */
public record Section(
        double area, SecondMoments bending, double torsionConstant, double torsionModulus, List<Fibre> fibres) {
    public Section {
        Require.positive("area", area);
        Require.positive("torsionConstant", torsionConstant);
        Require.positive("torsionModulus", torsionModulus);
        fibres = List.copyOf(fibres);
        Require.that(!fibres.isEmpty(), "fibres", fibres.size(), "must hold a point");
    }
}
