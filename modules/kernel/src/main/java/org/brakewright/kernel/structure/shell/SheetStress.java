package org.brakewright.kernel.structure.shell;

/**
 * Stress at one point of a sheet.
 *
 * @param membrane the same through the thickness
 * @param bending at the top face, the side to which the normal points; the bottom face has its opposite
 */
public record SheetStress(PlaneStress membrane, PlaneStress bending) {
    public PlaneStress top() {
        return membrane.plus(bending);
    }

    public PlaneStress bottom() {
        return membrane.minus(bending);
    }

    /** The greater of both faces, Pa. */
    public double vonMises() {
        return Math.max(top().vonMises(), bottom().vonMises());
    }
}
