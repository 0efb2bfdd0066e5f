package org.brakewright.kernel.thermal;

/**
 * The fluid behind the pistons of one wheel as one lump.
 *
 * @param capacity J/K
 * @param fromLinings conductance from the linings through the pistons, W/K
 * @param toHousing conductance to the housing, W/K
 */
public record WheelFluid(double capacity, double fromLinings, double toHousing) {
    public WheelFluid {
        Require.positive("capacity", capacity);
        Require.notNegative("fromLinings", fromLinings);
        Require.notNegative("toHousing", toHousing);
    }
}
