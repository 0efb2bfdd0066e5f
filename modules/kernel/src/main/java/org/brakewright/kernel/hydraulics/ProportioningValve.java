package org.brakewright.kernel.hydraulics;

import java.util.OptionalDouble;

/**
 * Lets pressure through unchanged up to the knee, and above it a share of the rise.
 *
 * <p>Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 3 (from memory). Pressure rising; the valve's
 * hysteresis on release is not described.
 *
 * @param kneePressure pressure up to which outlet equals inlet, Pa
 * @param slope outlet rise over inlet rise above the knee, 0 (limiter) to 1 (no valve)
 */
public record ProportioningValve(double kneePressure, double slope) {
    public ProportioningValve {
        Demand.notNegative("kneePressure", kneePressure);
        Demand.between("slope", slope, 0, 1);
    }

    /** Outlet pressure (Pa) for an inlet pressure (Pa). */
    public double outlet(double inlet) {
        return Math.min(inlet, kneePressure) + slope * Math.max(0, inlet - kneePressure);
    }

    /** Least inlet pressure (Pa) for an outlet pressure (Pa); empty where a limiter never lets so much through. */
    public OptionalDouble inlet(double outlet) {
        if (outlet <= kneePressure) {
            return OptionalDouble.of(outlet);
        }
        double inlet = kneePressure + (outlet - kneePressure) / slope;
        return Double.isFinite(inlet) ? OptionalDouble.of(inlet) : OptionalDouble.empty();
    }
}
