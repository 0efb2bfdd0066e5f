package org.brakewright.drawing;

/**
 * A corner of a polyline and the way to the next one.
 *
 * @param bulge tangent of a quarter of the angle that the edge to the next corner turns by; 0 for a straight edge, 1
 *     for half a circle, positive when it turns left
 */
public record Vertex(Point at, double bulge) {
    public Vertex {
        Demand.finite("bulge", bulge);
    }

    /** A corner followed by a straight edge. */
    public static Vertex of(double x, double y) {
        return new Vertex(new Point(x, y), 0);
    }

    /** A corner followed by an arc that turns left by {@code degrees}, or right when negative. */
    public static Vertex turning(double x, double y, double degrees) {
        return new Vertex(new Point(x, y), Math.tan(Math.toRadians(degrees) / 4));
    }
}
