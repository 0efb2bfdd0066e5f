package org.brakewright.kernel.statistics;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;

/**
 * The bends of a noisy curve: a broken line through some of its points that passes every other no farther off than the
 * noise. Ramer 1972, Douglas and Peucker 1973 (from memory), with the distance along the ordinate alone.
 */
public final class Bends {
    private Bends() {}

    /**
     * Indices of the points that are kept, in order; first and last always are.
     *
     * @param at abscissas, strictly rising
     * @param values ordinates, as many, two at least
     * @param noise largest distance allowed, not negative, in the unit of the values; 0 keeps every true bend
     */
    public static int[] of(double[] at, double[] values, double noise) {
        if (at.length < 2 || at.length != values.length) {
            throw new IllegalArgumentException(
                    "at and values must be two or more and as many, were " + at.length + " and " + values.length);
        }
        if (!(noise >= 0)) {
            throw new IllegalArgumentException("noise must not be negative, was " + noise);
        }
        BitSet kept = new BitSet(at.length);
        kept.set(0);
        kept.set(at.length - 1);
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, at.length - 1});
        while (!open.isEmpty()) {
            int[] span = open.pop();
            int farthest = farthest(at, values, span, noise);
            if (farthest >= 0) {
                kept.set(farthest);
                open.push(new int[] {span[0], farthest});
                open.push(new int[] {farthest, span[1]});
            }
        }
        return kept.stream().toArray();
    }

    /** The point farthest off the straight line between two; -1 when all lie within the noise. */
    private static int farthest(double[] at, double[] values, int[] span, double noise) {
        double slope = (values[span[1]] - values[span[0]]) / (at[span[1]] - at[span[0]]);
        double most = noise;
        int farthest = -1;
        for (int i = span[0] + 1; i < span[1]; i++) {
            double off = Math.abs(values[i] - values[span[0]] - slope * (at[i] - at[span[0]]));
            if (off > most) {
                most = off;
                farthest = i;
            }
        }
        return farthest;
    }
}
