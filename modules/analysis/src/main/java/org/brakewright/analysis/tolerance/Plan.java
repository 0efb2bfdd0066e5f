package org.brakewright.analysis.tolerance;

import org.brakewright.kernel.statistics.EvenPoints;

/**
 * How a tolerance run is done. Threads change the time it takes and never the answer.
 *
 * @param samples cars drawn, best a power of two
 * @param seed chooses the cars; the same seed draws the same cars
 * @param threads that share the work
 */
public record Plan(int samples, long seed, int threads) {
    /** Fewest cars from which anything can be told. */
    public static final int LEAST_SAMPLES = 64;

    /** Most cars. */
    public static final int MOST_SAMPLES = EvenPoints.MOST_POINTS;

    /** Cars drawn when nobody says. */
    public static final int USUAL_SAMPLES = 4096;

    /** Seed when nobody says. */
    public static final long USUAL_SEED = 1;

    public Plan {
        if (samples < LEAST_SAMPLES || samples > MOST_SAMPLES) {
            throw new IllegalArgumentException(
                    "samples must lie between " + LEAST_SAMPLES + " and " + MOST_SAMPLES + ", was " + samples);
        }
        if (threads < 1) {
            throw new IllegalArgumentException("at least one thread expected, was " + threads);
        }
    }

    /** The usual run on a number of threads. */
    public static Plan usual(int threads) {
        return new Plan(USUAL_SAMPLES, USUAL_SEED, threads);
    }
}
