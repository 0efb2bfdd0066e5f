package org.brakewright.kernel.tubing;

/**
 * One bend on its centre line: a circular arc that touches both legs.
 *
 * @param radius of the centre line, m
 * @param angle by which the tube turns, rad, above 0, below pi
 */
public record BendArc(double radius, double angle) {
    public BendArc {
        Demand.positive("radius", radius);
        Demand.belowHalfTurn("angle", angle);
    }

    /** Length (m) of the arc. */
    public double arc() {
        return radius * angle;
    }

    /** Set-back (m): from the crossing of the legs to where the bend begins. */
    public double tangent() {
        return radius * Math.tan(angle / 2);
    }

    /** Gain (m): what the bend is shorter than the two set-backs. */
    public double gain() {
        return 2 * tangent() - arc();
    }
}
