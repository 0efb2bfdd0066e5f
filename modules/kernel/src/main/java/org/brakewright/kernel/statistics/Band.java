package org.brakewright.kernel.statistics;

import java.util.Arrays;

/**
 * The band in which results lie, told by quantiles; between two results in order a quantile lies on the straight line.
 *
 * <p>Source: definition 7 of R. J. Hyndman and Y. Fan, "Sample quantiles in statistical packages", 1996, from memory.
 *
 * @param p05 one result in twenty is below
 * @param p25 one in four is below
 * @param p50 half are below
 * @param p75 three in four are below
 * @param p95 nineteen in twenty are below
 */
public record Band(double p05, double p25, double p50, double p75, double p95) {

    /**
     * The band of at least one result, in any order.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static Band of(double[] results) {
        if (results.length == 0) {
            throw new IllegalArgumentException("a band needs at least one result");
        }
        double[] rising = results.clone();
        Arrays.sort(rising);
        return new Band(
                quantile(rising, 0.05),
                quantile(rising, 0.25),
                quantile(rising, 0.50),
                quantile(rising, 0.75),
                quantile(rising, 0.95));
    }

    private static double quantile(double[] rising, double probability) {
        double place = probability * (rising.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, rising.length - 1);
        return rising[below] + (place - below) * (rising[above] - rising[below]);
    }
}
