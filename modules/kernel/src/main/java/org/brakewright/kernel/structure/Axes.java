package org.brakewright.kernel.structure;

/** Three directions at right angles, right-handed, each of length 1. */
public record Axes(Vector3 x, Vector3 y, Vector3 z) {
    public static final Axes OF_STRUCTURE = new Axes(new Vector3(1, 0, 0), new Vector3(0, 1, 0), new Vector3(0, 0, 1));

    private static final double SQUARE_ENOUGH = 1e-9;

    public Axes {
        Require.that(x.cross(y).minus(z).length() < SQUARE_ENOUGH, "z", z.z(), "must be x cross y");
        Require.that(Math.abs(x.dot(y)) < SQUARE_ENOUGH, "x . y", x.dot(y), "must be square");
        Require.that(Math.abs(x.length() - 1) < SQUARE_ENOUGH, "length of x", x.length(), "must be 1");
    }

    /**
     * The x axis runs along the first vector; z lies in the plane of both, on the side of the second.
     *
     * @param up not parallel to {@code along}
     */
    public static Axes along(Vector3 along, Vector3 up) {
        Vector3 x = along.unit();
        Vector3 y = up.cross(x);
        Require.that(y.length() > SQUARE_ENOUGH * up.length(), "up", y.length(), "must not be parallel to along");
        Vector3 across = y.unit();
        return new Axes(x, across, x.cross(across));
    }

    /** Rows are the three directions: takes components of the structure to components along these axes. */
    double[] rows() {
        return new double[] {x.x(), x.y(), x.z(), y.x(), y.y(), y.z(), z.x(), z.y(), z.z()};
    }
}
