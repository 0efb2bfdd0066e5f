package org.brakewright.kernel.structure;

/**
 * Stress in a cut through a beam.
 *
 * @param least direct stress at the extreme fibres, tension positive, Pa
 * @param greatest direct stress at the extreme fibres, Pa
 * @param torsion the greatest shear stress from torsion, Pa
 * @param meanShear shear force over area, Pa; at the middle of the depth the true figure is up to twice as much
 */
public record BeamStress(double least, double greatest, double torsion, double meanShear) {
    /** Bending at the extreme fibre with torsion and mean shear as if all met there, on the safe side; Pa. */
    public double vonMises() {
        double direct = Math.max(Math.abs(least), Math.abs(greatest));
        double shear = torsion + meanShear;
        return Math.sqrt(direct * direct + 3 * shear * shear);
    }
}
