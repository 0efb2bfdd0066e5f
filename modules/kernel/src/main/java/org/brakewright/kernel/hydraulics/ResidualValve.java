package org.brakewright.kernel.hydraulics;

/**
 * Keeps a little pressure in a line at rest: against drain-back where the master sits below the brakes, and for the
 * cup seals of wheel cylinders.
 *
 * <p>Model: flow toward the brake is free; on release the valve closes when the line has fallen to the held pressure,
 * so a line never keeps more than it once had.
 *
 * @param heldPressure that the closed valve keeps, Pa
 */
public record ResidualValve(double heldPressure) {
    public ResidualValve {
        Demand.notNegative("heldPressure", heldPressure);
    }

    /** Line pressure (Pa) at a master pressure (Pa), after the line has been as high as the given peak (Pa). */
    public double line(double masterPressure, double peak) {
        return Math.max(masterPressure, Math.min(peak, heldPressure));
    }

    /** Whether the held pressure balances the head (Pa) that drives fluid back to the master. */
    public boolean holds(double head) {
        return heldPressure >= head;
    }
}
