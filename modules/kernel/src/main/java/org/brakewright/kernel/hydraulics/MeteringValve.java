package org.brakewright.kernel.hydraulics;

/**
 * Holds the front discs off until the rear shoes have moved, then catches up.
 *
 * <p>Model: nothing passes up to the opening pressure; from there the outlet rises in a straight line and meets the
 * inlet at the blend pressure; above it the valve is fully open. Pressure rising; the small pressure that some valves
 * let through before they close is neglected. Source: R. Limpert, Brake Design and Safety, ch. 5 (from memory; the
 * straight blend is our simplification).
 *
 * @param openingPressure up to which the outlet stays without pressure, Pa
 * @param blendPressure from which outlet equals inlet, above the opening pressure, Pa
 */
public record MeteringValve(double openingPressure, double blendPressure) {
    public MeteringValve {
        Demand.notNegative("openingPressure", openingPressure);
        Demand.within("blendPressure", blendPressure, blendPressure > openingPressure, "more than openingPressure");
    }

    /** Outlet pressure (Pa) for an inlet pressure (Pa, not negative). */
    public double outlet(double inlet) {
        double blending = (inlet - openingPressure) * blendPressure / (blendPressure - openingPressure);
        return Math.max(0, Math.min(inlet, blending));
    }

    /** Largest inlet pressure (Pa) that gives an outlet pressure (Pa, not negative). */
    public double inlet(double outlet) {
        double blending = openingPressure + outlet * (blendPressure - openingPressure) / blendPressure;
        return Math.max(outlet, blending);
    }
}
