package org.brakewright.kernel.mesh;

/** A place in the plane of the panel, m. */
public record Spot(double x, double y) {
    public Spot {
        Require.finite("x", x);
        Require.finite("y", y);
    }

    /** The distance to another spot, m. */
    public double to(Spot other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** The spot at a share of the way to another. */
    Spot towards(Spot other, double share) {
        return new Spot(x + share * (other.x - x), y + share * (other.y - y));
    }
}
