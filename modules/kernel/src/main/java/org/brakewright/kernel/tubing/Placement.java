package org.brakewright.kernel.tubing;

/**
 * Where a bent tube lies: its start, its first direction, and the axis about which the first bend turns.
 *
 * @param start m
 * @param forward along the first leg; made of length 1
 * @param axis of the first bend, square to {@code forward}; made of length 1
 */
public record Placement(Point start, Point forward, Point axis) {
    private static final double SQUARE = 1e-9;

    public Placement {
        forward = forward.unit();
        axis = axis.unit();
        Demand.holds(Math.abs(forward.dot(axis)) <= SQUARE, "axis must stand square to forward");
    }

    /** How a route lies; a straight one has any axis that is square to it. */
    public static Placement of(Route route) {
        Point forward = route.legs().getFirst().unit();
        Point axis = route.legs().size() > 1 ? forward.cross(route.legs().get(1)) : anySquareTo(forward);
        return new Placement(route.points().getFirst(), forward, axis);
    }

    /** The end of a leg of the given length (m), with the directions as they are. */
    Placement moved(double length) {
        return new Placement(start.plus(forward.times(length)), forward, axis);
    }

    /** After a rotation of the bend plane and a bend in it (rad). */
    Placement bent(double rotation, double angle) {
        Point turned = axis.turnedSquare(forward, rotation);
        return new Placement(start, forward.turnedSquare(turned, angle), turned);
    }

    private static Point anySquareTo(Point forward) {
        Point aside = Math.abs(forward.z()) < 0.5 ? new Point(0, 0, 1) : new Point(1, 0, 0);
        return forward.cross(aside);
    }
}
