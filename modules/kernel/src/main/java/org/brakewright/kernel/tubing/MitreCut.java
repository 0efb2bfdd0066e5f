package org.brakewright.kernel.tubing;

/**
 * A tube cut by a plane, laid flat: the paper wrapped round it ends in a sine.
 *
 * @param outsideDiameter m
 * @param cutAngle between the cut and a square cut, rad, 0 to below pi/2
 */
public record MitreCut(double outsideDiameter, double cutAngle) {
    public MitreCut {
        Demand.positive("outsideDiameter", outsideDiameter);
        Demand.holds(cutAngle >= 0 && cutAngle < Math.PI / 2, "cutAngle must be 0 to below pi/2, is " + cutAngle);
    }

    /** Height (m) of the edge over its mean, at an angle (rad) around the tube from the longest side. */
    public double edge(double around) {
        return outsideDiameter / 2 * Math.tan(cutAngle) * Math.cos(around);
    }

    /** From the shortest side to the longest, m. */
    public double depth() {
        return outsideDiameter * Math.tan(cutAngle);
    }
}
