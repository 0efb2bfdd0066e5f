package org.brakewright.kernel.tubing;

/**
 * A row of a bend table: feed, rotate, bend.
 *
 * @param straight length fed before the bend begins, m; below 0 where two bends overlap
 * @param rotation of the tube against the bend before it, rad, right-hand about the way forward, above -pi to pi; 0 in
 *     the first row
 * @param arc the bend
 */
public record Bend(double straight, double rotation, BendArc arc) {
    public Bend {
        Demand.holds(Double.isFinite(straight), "straight must be finite, is " + straight);
        Demand.holds(Double.isFinite(rotation), "rotation must be finite, is " + rotation);
    }
}
