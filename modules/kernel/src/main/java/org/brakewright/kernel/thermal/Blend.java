package org.brakewright.kernel.thermal;

/**
 * Goes over from one correlation to the next where the published branches do not meet.
 *
 * <p>Both are published on either side of one Reynolds number, where they differ by a quarter and more. A jump would make the
 * answer depend on the third digit of a speed, so within a factor around that number the logarithms are mixed with a weight
 * that begins and ends level. Outside the factor each branch is untouched.
 *
 * @param reynolds where the published branches change over
 * @param factor how far below and above it they are mixed, over 1
 */
record Blend(double reynolds, double factor) {

    /** The value at a Reynolds number, from that of the lower and that of the upper branch. */
    double between(double number, double lower, double upper) {
        double weight = weight(number);
        if (weight <= 0) {
            return lower;
        }
        return weight >= 1 ? upper : lower * Math.pow(upper / lower, weight);
    }

    private double weight(double number) {
        if (number <= reynolds / factor) {
            return 0;
        }
        if (number >= reynolds * factor) {
            return 1;
        }
        double share = 0.5 + 0.5 * Math.log(number / reynolds) / Math.log(factor);
        return share * share * (3 - 2 * share);
    }
}
