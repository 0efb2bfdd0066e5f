package org.brakewright.kernel.thermal;

/**
 * Equal snubs at equal intervals from ambient on, by a geometric series: each adds the same rise, and between them the rotor keeps
 * the same share of what it is above ambient (R. Limpert, Brake Design and Safety, ch. 3, from memory). Cooling in proportion
 * to the excess, constant specific heat.
 *
 * @param rise of one snub, K
 * @param kept share of the excess that is left after an interval, 0 to below 1
 */
public record SnubSeries(double rise, double kept) {
    public SnubSeries {
        Require.notNegative("rise", rise);
        Require.that(kept >= 0 && kept < 1, "kept", kept, "must lie from 0 to below 1");
    }

    /** Share kept over an interval in s by a rotor that gives off conductance (W/K) and stores capacity (J/K). */
    public static double kept(double conductance, double interval, double capacity) {
        return Math.exp(-conductance * interval / capacity);
    }

    /** Excess over ambient right after a number of snubs, K. */
    public double after(int snubs) {
        Require.notNegative("snubs", snubs);
        return rise * (1 - Math.pow(kept, snubs)) / (1 - kept);
    }

    /** Excess over ambient right before a snub, counted from one, K. */
    public double before(int snub) {
        return kept * after(snub - 1);
    }

    /** Excess after any number of snubs, K. */
    public double limit() {
        return rise / (1 - kept);
    }
}
