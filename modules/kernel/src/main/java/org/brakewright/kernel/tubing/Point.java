package org.brakewright.kernel.tubing;

/**
 * A point or a direction in space.
 *
 * @param x m for a point, - for a direction
 * @param y as x
 * @param z as x
 */
public record Point(double x, double y, double z) {
    public Point {
        Demand.holds(Double.isFinite(x + y + z), "x, y and z must be finite, are " + x + ", " + y + ", " + z);
    }

    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y, z + other.z);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y, z - other.z);
    }

    public Point times(double factor) {
        return new Point(factor * x, factor * y, factor * z);
    }

    public double dot(Point other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Point cross(Point other) {
        return new Point(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** Distance from the origin, m. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    /** Direction of length 1; the length must not be 0. */
    public Point unit() {
        Demand.positive("length of a direction", length());
        return times(1 / length());
    }

    /** Turned about an axis of length 1 that stands square to this, by the right-hand rule (rad). */
    Point turnedSquare(Point axis, double angle) {
        return times(Math.cos(angle)).plus(axis.cross(this).times(Math.sin(angle)));
    }
}
