package org.brakewright.kernel.tubing;

import java.util.ArrayList;
import java.util.List;

/**
 * The middle of a bent tube as a chain of chords. Straights are exact; in a bend of radius R the chord lies within
 * R (1 - cos 2.5 degrees), a thousandth of R, of the arc.
 *
 * @param points m
 */
public record CentreLine(List<Point> points) {
    private static final double CHORD = Math.toRadians(5);
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
    private static final int STEPS = 40;

    public CentreLine {
        points = List.copyOf(points);
        Demand.holds(points.size() >= 2, "points must be 2 or more, are " + points.size());
    }

    /** The middle of a route. */
    public static CentreLine of(Route route) {
        List<Point> chain = new ArrayList<>(List.of(route.points().getFirst()));
        List<Point> legs = route.legs();
        List<BendArc> arcs = route.arcs();
        for (int i = 0; i < arcs.size(); i++) {
            Point in = legs.get(i).unit();
            Point axis = legs.get(i).cross(legs.get(i + 1)).unit();
            Point start = route.points().get(i + 1).minus(in.times(arcs.get(i).tangent()));
            Point centre = start.plus(axis.cross(in).times(arcs.get(i).radius()));
            arc(chain, start.minus(centre), axis, centre, arcs.get(i).angle());
        }
        chain.add(route.points().getLast());
        return new CentreLine(chain);
    }

    /** Length (m) of the chain. */
    public double length() {
        double length = 0;
        for (int i = 1; i < points.size(); i++) {
            length += points.get(i).minus(points.get(i - 1)).length();
        }
        return length;
    }

    /**
     * Where the middle comes nearest to an envelope, or lies deepest in it.
     *
     * @param distance to the surface, m; below 0 inside
     * @param at the place
     * @param along from the start, m
     */
    public record Nearest(double distance, Point at, double along) {}

    /**
     * The nearest place to an envelope. Along a straight piece the signed distance of a convex body is convex, so a
     * golden section finds its least. The nearest of the chain's points is found first; pieces that cannot come nearer
     * than what was found are passed over, since no distance changes faster than the place.
     */
    public Nearest nearest(Envelope envelope) {
        double[] distances = points.stream().mapToDouble(envelope::distance).toArray();
        Nearest best = nearestPoint(distances);
        double along = 0;
        for (int i = 1; i < distances.length; i++) {
            Point from = points.get(i - 1);
            double length = points.get(i).minus(from).length();
            if ((distances[i - 1] + distances[i] - length) / 2 < best.distance()) {
                double share = share(envelope, from, points.get(i));
                Point at = between(from, points.get(i), share);
                double distance = envelope.distance(at);
                best = distance < best.distance() ? new Nearest(distance, at, along + share * length) : best;
            }
            along += length;
        }
        return best;
    }

    private Nearest nearestPoint(double[] distances) {
        int least = 0;
        double before = 0;
        double along = 0;
        for (int i = 1; i < distances.length; i++) {
            before += points.get(i).minus(points.get(i - 1)).length();
            if (distances[i] < distances[least]) {
                least = i;
                along = before;
            }
        }
        return new Nearest(distances[least], points.get(least), along);
    }

    private static double share(Envelope envelope, Point from, Point to) {
        double low = 0;
        double high = 1;
        double left = high - GOLDEN;
        double right = GOLDEN;
        double atLeft = envelope.distance(between(from, to, left));
        double atRight = envelope.distance(between(from, to, right));
        for (int step = 0; step < STEPS; step++) {
            if (atLeft <= atRight) {
                high = right;
                right = left;
                atRight = atLeft;
                left = high - GOLDEN * (high - low);
                atLeft = envelope.distance(between(from, to, left));
            } else {
                low = left;
                left = right;
                atLeft = atRight;
                right = low + GOLDEN * (high - low);
                atRight = envelope.distance(between(from, to, right));
            }
        }
        double inside = (low + high) / 2;
        double least = envelope.distance(between(from, to, inside));
        if (envelope.distance(from) <= least) {
            return 0;
        }
        return envelope.distance(to) < least ? 1 : inside;
    }

    private static Point between(Point from, Point to, double share) {
        return from.plus(to.minus(from).times(share));
    }

    private static void arc(List<Point> chain, Point spoke, Point axis, Point centre, double angle) {
        int chords = (int) Math.ceil(angle / CHORD);
        for (int i = 0; i <= chords; i++) {
            chain.add(centre.plus(spoke.turnedSquare(axis, angle * i / chords)));
        }
    }
}
