package org.brakewright.kernel.gap;

/**
 * A point or a vector.
 *
 * @param x first coordinate, m
 * @param y second coordinate, m
 * @param z third coordinate, m
 */
public record Point(double x, double y, double z) {
    /** Refuses what is no number. */
    public Point {
        if (!Double.isFinite(x + y + z)) {
            throw new IllegalArgumentException("a point needs finite coordinates: " + x + ", " + y + ", " + z);
        }
    }

    /** The sum with another vector. */
    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y, z + other.z);
    }

    /** The vector from another point to this one. */
    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y, z - other.z);
    }

    /** This vector, longer by a factor. */
    public Point times(double factor) {
        return new Point(x * factor, y * factor, z * factor);
    }

    /** The scalar product, m2. */
    public double dot(Point other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** The vector product, m2. */
    public Point cross(Point other) {
        return new Point(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** The length of the vector, m. */
    public double length() {
        return Math.sqrt(dot(this));
    }
}
