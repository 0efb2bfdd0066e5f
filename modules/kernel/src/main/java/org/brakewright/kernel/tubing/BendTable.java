package org.brakewright.kernel.tubing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A tube as the bender makes it: feed, rotate and bend, row by row, and the straight that is left.
 *
 * @param bends in order; none for a straight tube
 * @param tail straight after the last bend, m; below 0 where the last bend reaches past the end
 */
public record BendTable(List<Bend> bends, double tail) {
    public BendTable {
        bends = List.copyOf(bends);
        Demand.holds(Double.isFinite(tail), "tail must be finite, is " + tail);
    }

    /** The table of a route. */
    public static BendTable of(Route route) {
        List<BendArc> arcs = route.arcs();
        List<Double> rotations = rotations(route.legs());
        List<Bend> bends = IntStream.range(0, arcs.size())
                .mapToObj(i -> new Bend(straight(route, arcs, i), rotations.get(i), arcs.get(i)))
                .toList();
        return new BendTable(bends, straight(route, arcs, arcs.size()));
    }

    /** Length (m) of the centre line: straights and arcs. */
    public double developedLength() {
        return tail
                + bends.stream()
                        .mapToDouble(bend -> bend.straight() + bend.arc().arc())
                        .sum();
    }

    /** The points that the table makes, from where the tube lies. */
    public Route route(Placement placement) {
        List<Point> points = new ArrayList<>(List.of(placement.start()));
        Placement at = placement;
        double setBack = 0;
        for (Bend bend : bends) {
            at = at.moved(setBack + bend.straight() + bend.arc().tangent());
            points.add(at.start());
            at = at.bent(bend.rotation(), bend.arc().angle());
            setBack = bend.arc().tangent();
        }
        points.add(at.moved(setBack + tail).start());
        return new Route(points, bends.stream().map(bend -> bend.arc().radius()).toList());
    }

    /** Every straight (m) in order, the tail last. */
    public List<Double> straights() {
        List<Double> straights =
                new ArrayList<>(bends.stream().map(Bend::straight).toList());
        straights.add(tail);
        return List.copyOf(straights);
    }

    private static double straight(Route route, List<BendArc> arcs, int leg) {
        double before = leg == 0 ? 0 : arcs.get(leg - 1).tangent();
        double after = leg == arcs.size() ? 0 : arcs.get(leg).tangent();
        return route.legs().get(leg).length() - before - after;
    }

    private static List<Double> rotations(List<Point> legs) {
        return IntStream.range(1, legs.size())
                .mapToObj(i -> i == 1 ? 0.0 : rotation(legs.get(i - 2), legs.get(i - 1), legs.get(i)))
                .toList();
    }

    /** From the plane of two legs to that of the next two, about the leg in the middle. */
    private static double rotation(Point before, Point middle, Point after) {
        Point first = before.cross(middle).unit();
        Point second = middle.cross(after).unit();
        double angle = Math.atan2(first.cross(second).dot(middle.unit()), first.dot(second));
        return angle < -Math.PI + Route.LEAST_BEND ? angle + 2 * Math.PI : angle;
    }
}
