package org.brakewright.kernel.statistics;

/**
 * Every value between two ends equally likely: what remains when only "plus or minus" is known.
 *
 * <p>Source: JCGM 100:2008 (GUM) 4.3.7, from memory.
 *
 * @param low lower end, any unit
 * @param high upper end, same unit
 */
public record Rectangular(double low, double high) implements Distribution {

    public Rectangular {
        if (!(low <= high && Double.isFinite(high - low))) {
            throw new IllegalArgumentException("finite low <= high expected: " + low + ", " + high);
        }
    }

    @Override
    public double quantile(double probability) {
        return low + Distribution.probability(probability) * (high - low);
    }

    @Override
    public double mean() {
        return 0.5 * (low + high);
    }

    @Override
    public double standardUncertainty() {
        return (high - low) / Math.sqrt(12);
    }
}
