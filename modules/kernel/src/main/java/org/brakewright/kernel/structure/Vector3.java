package org.brakewright.kernel.structure;

/**
 * Three components along the axes of the structure: a place or shift in m, a force in N, a moment in N m, small
 * rotations in rad.
 */
public record Vector3(double x, double y, double z) {
    public static final Vector3 ZERO = new Vector3(0, 0, 0);

    public Vector3 {
        Require.finite("x", x);
        Require.finite("y", y);
        Require.finite("z", z);
    }

    public Vector3 plus(Vector3 other) {
        return new Vector3(x + other.x, y + other.y, z + other.z);
    }

    public Vector3 minus(Vector3 other) {
        return new Vector3(x - other.x, y - other.y, z - other.z);
    }

    public Vector3 times(double factor) {
        return new Vector3(factor * x, factor * y, factor * z);
    }

    public double dot(Vector3 other) {
        return x * other.x + y * other.y + z * other.z;
    }

    public Vector3 cross(Vector3 other) {
        return new Vector3(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(dot(this));
    }

    /** The same direction at length 1. */
    Vector3 unit() {
        return times(1 / length());
    }
}
