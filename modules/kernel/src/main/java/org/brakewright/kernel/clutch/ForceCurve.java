package org.brakewright.kernel.clutch;

import java.util.ArrayList;
import java.util.List;

/**
 * A force over a travel, through measured points from nothing at no travel: smooth, and between two points never above
 * or below both.
 *
 * <p>Cubic pieces whose slope at a point is zero where the force turns, else the harmonic mean of both sides weighted by
 * their lengths. Source: F. N. Fritsch and R. E. Carlson, Monotone Piecewise Cubic Interpolation, SIAM Journal on
 * Numerical Analysis 17 (1980); weights of F. N. Fritsch and J. Butland (1984).
 *
 * @param points at least one; travels above 0 and rising, forces not negative
 */
public record ForceCurve(List<Point> points) {
    public ForceCurve {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("points is []; allowed is at least one point");
        }
        double before = 0;
        for (Point point : points) {
            Demand.within("travel", point.travel(), point.travel() > before, "more than " + before);
            Demand.notNegative("force", point.force());
            before = point.travel();
        }
    }

    /**
     * One measured point.
     *
     * @param travel m
     * @param force N
     */
    public record Point(double travel, double force) {}

    /** Force (N) at a travel (m); nothing before the first touch, and the last force beyond the last point. */
    public double force(double travel) {
        if (travel <= 0) {
            return 0;
        }
        List<Point> all = new ArrayList<>(points.size() + 1);
        all.add(new Point(0, 0));
        all.addAll(points);
        int piece = 1;
        while (piece < all.size() && travel > all.get(piece).travel()) {
            piece++;
        }
        return piece == all.size() ? all.getLast().force() : cubic(all, piece, travel);
    }

    /** Whether a travel (m) lies beyond the last point, so that the force is not known. */
    public boolean beyondData(double travel) {
        return travel > points.getLast().travel();
    }

    private static double cubic(List<Point> all, int piece, double travel) {
        Point low = all.get(piece - 1);
        Point high = all.get(piece);
        double length = high.travel() - low.travel();
        double along = (travel - low.travel()) / length;
        double rest = 1 - along;
        return rest * rest * (1 + 2 * along) * low.force()
                + along * along * (1 + 2 * rest) * high.force()
                + length * along * rest * (rest * slope(all, piece - 1) - along * slope(all, piece));
    }

    private static double slope(List<Point> all, int at) {
        if (at == 0 || at == all.size() - 1) {
            return end(all, at);
        }
        double before = secant(all, at);
        double after = secant(all, at + 1);
        if (before * after <= 0) {
            return 0;
        }
        double lengthBefore = length(all, at);
        double lengthAfter = length(all, at + 1);
        double weightBefore = 2 * lengthAfter + lengthBefore;
        double weightAfter = lengthAfter + 2 * lengthBefore;
        return (weightBefore + weightAfter) / (weightBefore / before + weightAfter / after);
    }

    /** At an end the slope of the only piece: with two points or more this keeps the rise straight at first touch. */
    private static double end(List<Point> all, int at) {
        return at == 0 ? secant(all, 1) : secant(all, at);
    }

    private static double secant(List<Point> all, int piece) {
        return (all.get(piece).force() - all.get(piece - 1).force()) / length(all, piece);
    }

    private static double length(List<Point> all, int piece) {
        return all.get(piece).travel() - all.get(piece - 1).travel();
    }
}
