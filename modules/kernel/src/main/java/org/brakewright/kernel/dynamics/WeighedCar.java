package org.brakewright.kernel.dynamics;

/**
 * A car on level scales.
 *
 * @param front load of the front axle, N
 * @param rear load of the rear axle, N
 * @param wheelbase horizontal distance of the axles on level scales, m
 * @param frontRadius height of the front wheel centers above their scales, m
 * @param rearRadius height of the rear wheel centers above their scales, m
 */
public record WeighedCar(double front, double rear, double wheelbase, double frontRadius, double rearRadius) {
    public WeighedCar {
        Require.positive("front", front);
        Require.positive("rear", rear);
        Require.positive("wheelbase", wheelbase);
        Require.positive("frontRadius", frontRadius);
        Require.positive("rearRadius", rearRadius);
    }

    /** N. */
    public double weight() {
        return front + rear;
    }
}
