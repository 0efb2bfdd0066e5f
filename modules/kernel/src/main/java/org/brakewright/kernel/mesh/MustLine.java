package org.brakewright.kernel.mesh;

/** A straight line along which edges of triangles must lie: a stringer. */
public record MustLine(String name, Spot from, Spot to) {
    /** m. */
    public double length() {
        return from.to(to);
    }

    /** Distance of a spot, m. */
    double distance(Spot spot) {
        return spot.to(from.towards(to, Math.clamp(share(spot), 0, 1)));
    }

    /** Where along the line a spot lies: 0 at its start, 1 at its end. */
    double share(Spot spot) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double square = dx * dx + dy * dy;
        return square > 0 ? ((spot.x() - from.x()) * dx + (spot.y() - from.y()) * dy) / square : 0;
    }
}
