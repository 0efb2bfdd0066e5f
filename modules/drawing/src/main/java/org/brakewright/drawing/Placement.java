package org.brakewright.drawing;

/**
 * Where a figure stands: mirrored left to right first, then scaled, then turned, then moved.
 *
 * @param to where the figure's origin comes to stand
 * @param rotation degrees counterclockwise
 */
public record Placement(Point to, double rotation, double scale, boolean mirrored) {
    public Placement {
        Demand.finite("rotation", rotation);
        Demand.positive("scale", scale);
    }

    /** Moves only. */
    public static Placement at(double x, double y) {
        return new Placement(new Point(x, y), 0, 1, false);
    }

    /** Where a place of the figure comes to stand. */
    public Point apply(Point point) {
        double angle = Math.toRadians(rotation);
        double x = scale * (mirrored ? -point.x() : point.x());
        double y = scale * point.y();
        return to.plus(x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle));
    }
}
