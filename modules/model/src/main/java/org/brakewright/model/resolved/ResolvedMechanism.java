package org.brakewright.model.resolved;

/**
 * A pedal's points in its own plane at rest, from the pivot, x toward the nose of the car, y up, m.
 *
 * @param pad its centre
 * @param pin of the pushrod, or bearing of the balance bar
 * @param socket end of the rod in the piston
 * @param axisDirection in which the piston advances, rad from x, anticlockwise
 */
public record ResolvedMechanism(Point pad, Point pin, Point socket, double axisDirection) {

    /**
     * A point.
     *
     * @param x forward, m
     * @param y up, m
     */
    public record Point(double x, double y) {}
}
