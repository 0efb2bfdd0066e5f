package org.brakewright.drawing;

/**
 * A place on the drawing.
 *
 * @param x to the right, mm
 * @param y up, mm
 */
public record Point(double x, double y) {
    public Point {
        Demand.finite("x", x);
        Demand.finite("y", y);
    }

    /** The place {@code dx} to the right and {@code dy} above, mm. */
    public Point plus(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** The place at a distance in mm and a direction in degrees, counterclockwise from the x axis. */
    public Point polar(double distance, double degrees) {
        double angle = Math.toRadians(degrees);
        return plus(distance * Math.cos(angle), distance * Math.sin(angle));
    }

    /** Distance to another place, mm. */
    public double distance(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** Direction towards another place, degrees counterclockwise from the x axis, in (-180, 180]. */
    public double direction(Point other) {
        return Math.toDegrees(Math.atan2(other.y - y, other.x - x));
    }
}
