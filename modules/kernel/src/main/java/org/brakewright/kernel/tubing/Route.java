package org.brakewright.kernel.tubing;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The centre line of a tube as the points where its straight legs cross, with a radius at each point between the ends.
 *
 * @param points two or more, m; none doubled, no three in a line, none that folds the tube back on itself
 * @param radii of the bends, m, one for each point between the ends
 */
public record Route(List<Point> points, List<Double> radii) {
    /** A bend below this (rad) is no bend: its plane cannot be told. */
    static final double LEAST_BEND = 1e-6;

    public Route {
        points = List.copyOf(points);
        radii = List.copyOf(radii);
        Demand.holds(points.size() >= 2, "points must be 2 or more, are " + points.size());
        Demand.holds(
                radii.size() == points.size() - 2,
                "radii must be one for each point between the ends, " + (points.size() - 2) + ", are " + radii.size());
        radii.forEach(radius -> Demand.positive("radius", radius));
        legs(points).forEach(leg -> Demand.positive("distance between successive points", leg.length()));
        turns(points).forEach(Route::demandBend);
    }

    /** Legs from point to point, m. */
    public List<Point> legs() {
        return legs(points);
    }

    /** Bends in order along the tube. */
    public List<BendArc> arcs() {
        List<Double> turns = turns(points);
        return IntStream.range(0, turns.size())
                .mapToObj(i -> new BendArc(radii.get(i), turns.get(i)))
                .toList();
    }

    private static List<Point> legs(List<Point> points) {
        return IntStream.range(1, points.size())
                .mapToObj(i -> points.get(i).minus(points.get(i - 1)))
                .toList();
    }

    private static List<Double> turns(List<Point> points) {
        List<Point> legs = legs(points);
        return IntStream.range(1, legs.size())
                .mapToObj(i -> turn(legs.get(i - 1), legs.get(i)))
                .toList();
    }

    private static double turn(Point in, Point out) {
        return Math.atan2(in.cross(out).length(), in.dot(out));
    }

    private static void demandBend(double angle) {
        Demand.holds(
                angle > LEAST_BEND && angle < Math.PI - LEAST_BEND,
                "each inner point must turn the tube, by less than a half turn; one turns it by " + angle + " rad");
    }
}
