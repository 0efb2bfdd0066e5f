package org.brakewright.kernel.statistics;

/**
 * How much of the variance of a result one input owns by itself: the first-order index of variance-based sensitivity, from
 * samples that anyone has drawn.
 *
 * <p>The samples are put into bins by the input's probability. What differs between the bins' means is owned by the input;
 * what differs within a bin comes from all the others. Few samples in a bin make means differ by chance alone, which
 * Kelley's correction takes off. With as many bins as the cube root of the samples, what a bin hides of the input's own
 * doing and what the correction takes off too much from even points stay equally small.
 *
 * <p>Sources: K. Pearson 1905 (correlation ratio); T. L. Kelley 1935 (correction); I. M. Sobol' 1993 (index); all from
 * memory.
 */
public final class VarianceShare {
    private static final int LEAST_BINS = 4;
    private static final int MOST_BINS = 64;

    private VarianceShare() {}

    /**
     * The share, 0 to 1.
     *
     * @param probabilities where each sample's input lies in its distribution, 0 to 1
     * @param results the result of each sample
     * @return 0 also when the result does not vary
     * @throws IllegalArgumentException when the two differ in length or there are fewer than 16 samples
     */
    public static double of(double[] probabilities, double[] results) {
        int count = results.length;
        if (probabilities.length != count || count < LEAST_BINS * LEAST_BINS) {
            throw new IllegalArgumentException(
                    "at least 16 pairs expected, were " + probabilities.length + " inputs and " + count + " results");
        }
        double mean = mean(results);
        Bins bins = new Bins(bins(count));
        double total = 0;
        for (int i = 0; i < count; i++) {
            double off = results[i] - mean;
            bins.add(probabilities[i], off);
            total += off * off;
        }
        return total == 0 ? 0 : corrected(bins, total, count);
    }

    /** What the share of an input that does nothing typically strays by with so many samples: a share below is nothing. */
    public static double noise(int count) {
        return Math.sqrt(2.0 * (bins(count) - 1)) / count;
    }

    private static int bins(int count) {
        return Math.clamp(Math.round(Math.cbrt(count)), LEAST_BINS, MOST_BINS);
    }

    /** Between the bins, less what chance alone puts there. */
    private static double corrected(Bins bins, double total, int count) {
        double between = bins.between();
        int used = bins.used();
        double within = (total - between) / (count - used);
        return Math.clamp((between - (used - 1) * within) / total, 0, 1);
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    /** Sums of deviations from the mean, bin by bin. */
    private static final class Bins {
        private final double[] sums;
        private final int[] counts;

        Bins(int number) {
            this.sums = new double[number];
            this.counts = new int[number];
        }

        void add(double probability, double off) {
            int bin = Math.clamp((int) (probability * sums.length), 0, sums.length - 1);
            sums[bin] += off;
            counts[bin]++;
        }

        double between() {
            double between = 0;
            for (int bin = 0; bin < sums.length; bin++) {
                between += counts[bin] == 0 ? 0 : sums[bin] * sums[bin] / counts[bin];
            }
            return between;
        }

        int used() {
            int used = 0;
            for (int count : counts) {
                used += count == 0 ? 0 : 1;
            }
            return used;
        }
    }
}
