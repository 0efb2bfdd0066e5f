package org.brakewright.kernel.fatigue;

/**
 * One stress range, many times over.
 *
 * @param range from least to greatest nominal stress of a cycle, Pa
 * @param count how often; may be a fraction where it stands for a mean
 */
public record StressCycles(double range, double count) {
    public StressCycles {
        Require.that(range >= 0 && Double.isFinite(range), "range", range, "must be finite and not below zero");
        Require.that(count >= 0 && Double.isFinite(count), "count", count, "must be finite and not below zero");
    }
}
