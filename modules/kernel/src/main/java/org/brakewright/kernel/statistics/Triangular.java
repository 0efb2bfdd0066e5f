package org.brakewright.kernel.statistics;

/**
 * Values near a best guess are likelier than values near the ends, falling in straight lines to nothing.
 *
 * <p>Source: JCGM 100:2008 (GUM) 4.3.9 for the symmetric one, from memory; the skewed one in closed form.
 *
 * @param low lower end, any unit
 * @param peak likeliest value, same unit
 * @param high upper end, same unit
 */
public record Triangular(double low, double peak, double high) implements Distribution {

    public Triangular {
        if (!(low <= peak && peak <= high && Double.isFinite(high - low))) {
            throw new IllegalArgumentException(
                    "finite low <= peak <= high expected: " + low + ", " + peak + ", " + high);
        }
    }

    @Override
    public double quantile(double probability) {
        double below = Distribution.probability(probability) * (high - low);
        return below < peak - low
                ? low + Math.sqrt(below * (peak - low))
                : high - Math.sqrt((high - low - below) * (high - peak));
    }

    @Override
    public double mean() {
        return (low + peak + high) / 3;
    }

    @Override
    public double standardUncertainty() {
        double left = peak - low;
        double right = high - peak;
        return Math.sqrt((left * left + left * right + right * right) / 18);
    }
}
