package org.brakewright.kernel.statistics;

/** What is believed of an input between two ends. */
public sealed interface Distribution permits Rectangular, Triangular {

    /** The value that the input stays below with a probability between 0 and 1. */
    double quantile(double probability);

    /** Expected value. */
    double mean();

    /** Standard deviation, in the guide's words the standard uncertainty. */
    double standardUncertainty();

    /** Refuses a probability that is none. */
    static double probability(double probability) {
        if (!(probability >= 0 && probability <= 1)) {
            throw new IllegalArgumentException("probability must lie between 0 and 1, was " + probability);
        }
        return probability;
    }
}
