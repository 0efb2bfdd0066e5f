package org.brakewright.kernel.structure.shell;

/**
 * A triangle in its own plane: corner 1 at the origin, corner 2 on the x axis, corner 3 above it.
 *
 * @param x2 of corner 2, m
 * @param x3 of corner 3, m
 * @param y3 of corner 3, m
 */
public record LocalTriangle(double x2, double x3, double y3) {
    public LocalTriangle {
        Require.positive("x2", x2);
        Require.that(Double.isFinite(x3), "x3", x3, "must be finite");
        Require.positive("y3", y3);
    }

    /** m2. */
    public double area() {
        return x2 * y3 / 2;
    }

    double x(int corner) {
        return switch (corner) {
            case 0 -> 0;
            case 1 -> x2;
            default -> x3;
        };
    }

    double y(int corner) {
        return corner == 2 ? y3 : 0;
    }

    double dx(int to, int from) {
        return x(to) - x(from);
    }

    double dy(int to, int from) {
        return y(to) - y(from);
    }
}
