package org.brakewright.kernel.thermal;

/**
 * One lump that gives off heat in proportion to its excess over ambient, under steady power or none.
 *
 * @param capacity J/K
 * @param conductance to the air, W/K
 */
public record LumpCooling(double capacity, double conductance) {
    public LumpCooling {
        Require.positive("capacity", capacity);
        Require.positive("conductance", conductance);
    }

    /** Time in which the excess falls to 1/e, s. */
    public double timeConstant() {
        return capacity / conductance;
    }

    /** Excess over ambient (K) after a time (s) under a power (W), from an excess (K) at the start. */
    public double excess(double start, double power, double time) {
        double settled = power / conductance;
        return settled + (start - settled) * Math.exp(-time / timeConstant());
    }

    /** Time (s) to cool without power from one excess (K) to a smaller one. */
    public double timeTo(double start, double end) {
        Require.positive("end", end);
        Require.that(start >= end, "start", start, "must not be below the end");
        return timeConstant() * Math.log(start / end);
    }
}
