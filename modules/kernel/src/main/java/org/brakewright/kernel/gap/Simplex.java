package org.brakewright.kernel.gap;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Up to four corners of a difference and the weights that make the point of their hull nearest to the origin. */
record Simplex(List<Corner> corners, List<Double> weights) {
    /** Squared sine below which edges count as lying in one line or plane; their hull is then that of fewer corners. */
    private static final double FLAT = 1e-14;

    static Simplex of(Corner only) {
        return new Simplex(List.of(only), List.of(1.0));
    }

    /** The face of these corners and one more that carries the point nearest to the origin. */
    Simplex with(Corner added) {
        List<Corner> all = new ArrayList<>(corners);
        all.add(added);
        Simplex best = this;
        double least = nearest().dot(nearest());
        for (int chosen = 1; chosen < 1 << all.size(); chosen++) {
            Simplex face = face(all, chosen);
            double square = face.weights.isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : face.nearest().dot(face.nearest());
            if (square < least) {
                best = face;
                least = square;
            }
        }
        return best;
    }

    Point nearest() {
        return mean(corner -> corner.difference());
    }

    Point onFirst() {
        return mean(corner -> corner.first());
    }

    Point onSecond() {
        return mean(corner -> corner.second());
    }

    private Point mean(Function<Corner, Point> of) {
        Point sum = new Point(0, 0, 0);
        for (int i = 0; i < corners.size(); i++) {
            sum = sum.plus(of.apply(corners.get(i)).times(weights.get(i)));
        }
        return sum;
    }

    /** The chosen corners with their weights, without weights when the foot of the normal lies outside them. */
    private static Simplex face(List<Corner> all, int chosen) {
        List<Corner> some = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if ((chosen >> i & 1) == 1) {
                some.add(all.get(i));
            }
        }
        Point base = some.getFirst().difference();
        List<Point> edges = some.stream()
                .skip(1)
                .map(corner -> corner.difference().minus(base))
                .toList();
        double[] parts = foot(edges, base);
        List<Double> weights = new ArrayList<>();
        double rest = 1;
        for (double part : parts) {
            weights.add(part);
            rest -= part;
        }
        weights.addFirst(rest);
        boolean inside = parts.length == edges.size() && weights.stream().allMatch(weight -> weight >= 0);
        return new Simplex(some, inside ? weights : List.of());
    }

    /** How many of each edge lead from the base to the foot of the normal from the origin; none when edges are flat. */
    private static double[] foot(List<Point> edges, Point base) {
        List<Point> upright = new ArrayList<>();
        for (Point edge : edges) {
            Point rest = edge;
            for (Point other : upright) {
                rest = rest.minus(other.times(rest.dot(other) / other.dot(other)));
            }
            if (rest.dot(rest) <= FLAT * edge.dot(edge)) {
                return new double[edges.size() + 1];
            }
            upright.add(rest);
        }
        double[] parts = new double[edges.size()];
        Point left = base.times(-1);
        for (int i = edges.size() - 1; i >= 0; i--) {
            parts[i] = left.dot(upright.get(i)) / upright.get(i).dot(upright.get(i));
            left = left.minus(edges.get(i).times(parts[i]));
        }
        return parts;
    }
}
