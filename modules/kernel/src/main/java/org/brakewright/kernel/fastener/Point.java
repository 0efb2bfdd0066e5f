package org.brakewright.kernel.fastener;

/** A place in the plane of a joint, m. */
public record Point(double x, double y) {
    public Point {
        Require.that(Double.isFinite(x), "x", x, "must be finite");
        Require.that(Double.isFinite(y), "y", y, "must be finite");
    }

    Point minus(Point other) {
        return new Point(x - other.x, y - other.y);
    }
}
