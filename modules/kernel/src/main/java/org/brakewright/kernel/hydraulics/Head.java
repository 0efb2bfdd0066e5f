package org.brakewright.kernel.hydraulics;

/** Pressure of a standing column of fluid: rho g h. */
public final class Head {
    /** Standard gravity, ISO 80000-3, exact, m/s2. */
    public static final double GRAVITY = 9.80665;

    private Head() {}

    /** Pressure (Pa) under a column of a height (m) of fluid with a density (kg/m3). */
    public static double pressure(double height, double density) {
        return density * GRAVITY * height;
    }
}
