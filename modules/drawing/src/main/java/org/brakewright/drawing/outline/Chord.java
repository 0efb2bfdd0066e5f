package org.brakewright.drawing.outline;

import java.util.Optional;
import org.brakewright.drawing.Point;

/**
 * A straight piece of an edge.
 *
 * @param edge number of the edge, from 1
 */
record Chord(Point from, Point to, int edge) {
    /** Places nearer than this are the same, mm. */
    static final double SAME = 1e-6;

    /** Sine of the angle below which two chords count as parallel. */
    private static final double PARALLEL = 1e-9;

    double length() {
        return from.distance(to);
    }

    /** Where the two meet, their ends included. */
    Optional<Point> meets(Chord other) {
        double turn = cross(other.to.x() - other.from.x(), other.to.y() - other.from.y());
        if (Math.abs(turn) <= PARALLEL * length() * other.length()) {
            return overlap(other, -SAME);
        }
        double dx = other.from.x() - from.x();
        double dy = other.from.y() - from.y();
        double t = (dx * (other.to.y() - other.from.y()) - dy * (other.to.x() - other.from.x())) / turn;
        double u = -cross(dx, dy) / turn;
        return within(t, length()) && within(u, other.length()) ? Optional.of(at(t)) : Optional.empty();
    }

    /** The middle of what both have in common, when they are parallel and share more than {@code least} mm. */
    Optional<Point> overlap(Chord other, double least) {
        double dx = (to.x() - from.x()) / length();
        double dy = (to.y() - from.y()) / length();
        if (off(other.from) > SAME || off(other.to) > SAME) {
            return Optional.empty();
        }
        double a = dx * (other.from.x() - from.x()) + dy * (other.from.y() - from.y());
        double b = dx * (other.to.x() - from.x()) + dy * (other.to.y() - from.y());
        double low = Math.max(0, Math.min(a, b));
        double high = Math.min(length(), Math.max(a, b));
        return high - low > least ? Optional.of(at((low + high) / 2 / length())) : Optional.empty();
    }

    private Point at(double t) {
        return from.plus(t * (to.x() - from.x()), t * (to.y() - from.y()));
    }

    /** Distance of a place from the straight line through both ends. */
    private double off(Point point) {
        return Math.abs(cross(point.x() - from.x(), point.y() - from.y())) / length();
    }

    private double cross(double dx, double dy) {
        return (to.x() - from.x()) * dy - (to.y() - from.y()) * dx;
    }

    private static boolean within(double t, double length) {
        double slack = SAME / length;
        return t >= -slack && t <= 1 + slack;
    }
}
