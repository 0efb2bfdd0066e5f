package org.brakewright.kernel.statistics;

import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Points that fill a box of many dimensions more evenly than chance does: Sobol's sequence with a digital shift drawn from
 * a seed.
 *
 * <p>The shift turns over the same binary digits of one coordinate in all points. It keeps the evenness (each box of a
 * binary grid keeps its number of points) and moves the points off the box's faces.
 *
 * <p>Sources: I. M. Sobol' 1967; shift: A. B. Owen, "Quasi-Monte Carlo sampling", 2003, both from memory; direction
 * numbers: S. Joe and F. Y. Kuo 2008, as the numerics library of the house carries them.
 */
public final class EvenPoints {
    /** Most points that are made at once. */
    public static final int MOST_POINTS = 1 << 16;

    /** Most dimensions. */
    public static final int MOST_DIMENSIONS = 1000;

    private static final int DIGITS = 52;
    private static final double UNIT = 0x1p52;

    private EvenPoints() {}

    /**
     * The first points of the sequence; best a power of two of them.
     *
     * @param points how many
     * @param dimensions coordinates of a point
     * @param seed chooses the shift
     * @return coordinates strictly between 0 and 1, one array a dimension
     */
    public static double[][] of(int points, int dimensions, long seed) {
        require("points", points, MOST_POINTS);
        require("dimensions", dimensions, MOST_DIMENSIONS);
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimensions);
        double[][] coordinates = new double[dimensions][points];
        for (int point = 0; point < points; point++) {
            double[] plain = sequence.nextVector();
            for (int dimension = 0; dimension < dimensions; dimension++) {
                coordinates[dimension][point] = shifted(plain[dimension], shift(seed, dimension));
            }
        }
        return coordinates;
    }

    private static void require(String name, int value, int most) {
        if (value < 1 || value > most) {
            throw new IllegalArgumentException(name + " must lie between 1 and " + most + ", was " + value);
        }
    }

    /** Half a digit is added, so that no point lies on a face. */
    private static double shifted(double plain, long shift) {
        return (((long) (plain * UNIT) ^ shift) + 0.5) / UNIT;
    }

    /** Digits drawn for a dimension: one step of SplitMix64 (Steele, Lea and Flood 2014, constants from memory). */
    private static long shift(long seed, int dimension) {
        long z = seed + (dimension + 1) * 0x9e3779b97f4a7c15L;
        z = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        z = (z ^ (z >>> 27)) * 0x94d049bb133111ebL;
        return (z ^ (z >>> 31)) >>> (Long.SIZE - DIGITS);
    }
}
