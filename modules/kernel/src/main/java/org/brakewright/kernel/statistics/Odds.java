package org.brakewright.kernel.statistics;

/**
 * How often something happened in independent trials.
 *
 * <p>The standard error of a frequency k/n is the square root of p(1-p)/n. With p taken as k/n it would be nothing when
 * something happened never or always, so p is taken as (k+1)/(n+2) there (rule of succession, closed form).
 *
 * @param happened in how many trials
 * @param trials of how many, at least one
 */
public record Odds(int happened, int trials) {

    public Odds {
        if (happened < 0 || trials < 1 || happened > trials) {
            throw new IllegalArgumentException("0 <= happened <= trials expected: " + happened + " of " + trials);
        }
    }

    /** Share of the trials, 0 to 1. */
    public double probability() {
        return (double) happened / trials;
    }

    /** Standard error of that share. */
    public double standardError() {
        double likely = (happened + 1.0) / (trials + 2.0);
        return Math.sqrt(likely * (1 - likely) / trials);
    }
}
