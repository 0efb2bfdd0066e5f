package org.brakewright.kernel.gap;

import java.util.Comparator;
import java.util.PriorityQueue;

/**
 * The smallest gap along a swing, to a stated bound. No gap changes faster than the farthest corner moves, so between two
 * angles it cannot fall below what both ends allow; the stretch with the lowest such floor is halved until no floor lies
 * deeper than the tolerance (Piyavskii, An algorithm for finding the absolute extremum of a function, USSR Computational
 * Mathematics and Mathematical Physics 12 (1972) 57-67).
 *
 * @param gap the smallest gap found; its bound holds over the whole swing
 * @param angle where, rad
 */
public record SweptGap(Gap gap, double angle) {
    private static final int MOST_HALVINGS = 100_000;

    private record Look(double angle, Gap gap) {}

    private record Stretch(Look from, Look to, double reach) {
        double floor() {
            double way = reach * Math.abs(to.angle - from.angle);
            return (from.gap.clearance() + to.gap.clearance() - way) / 2;
        }
    }

    /**
     * The smallest gap between a swinging body and one that stands still.
     *
     * @param swing the body that swings
     * @param still the body that stands still
     * @param from angle at the beginning, rad
     * @param to angle at the end, rad; may be less than {@code from}
     * @param tolerance by how much the answer may lie above the truth, more than 0, m
     */
    public static SweptGap of(Swing swing, ConvexBody still, double from, double to, double tolerance) {
        if (!(tolerance > 0)) {
            throw new IllegalArgumentException("tolerance must be more than 0: " + tolerance);
        }
        double reach = swing.reach();
        Look start = look(swing, still, from);
        Look end = look(swing, still, to);
        Look best = lower(start, end);
        PriorityQueue<Stretch> open = new PriorityQueue<>(Comparator.comparingDouble(Stretch::floor));
        open.add(new Stretch(start, end, reach));
        for (int i = 0; i < MOST_HALVINGS && deeper(open, best, tolerance); i++) {
            Stretch deepest = open.remove();
            Look middle = look(swing, still, (deepest.from.angle + deepest.to.angle) / 2);
            best = lower(best, middle);
            open.add(new Stretch(deepest.from, middle, reach));
            open.add(new Stretch(middle, deepest.to, reach));
        }
        Gap gap = best.gap;
        double bound = Math.max(0, gap.clearance() - open.element().floor()) + gap.bound();
        return new SweptGap(new Gap(gap.clearance(), gap.first(), gap.second(), bound), best.angle);
    }

    private static boolean deeper(PriorityQueue<Stretch> open, Look best, double tolerance) {
        return open.element().floor() < best.gap.clearance() - tolerance;
    }

    private static Look lower(Look one, Look other) {
        return other.gap.clearance() < one.gap.clearance() ? other : one;
    }

    private static Look look(Swing swing, ConvexBody still, double angle) {
        return new Look(angle, NearestPoints.between(swing.at(angle), still));
    }
}
