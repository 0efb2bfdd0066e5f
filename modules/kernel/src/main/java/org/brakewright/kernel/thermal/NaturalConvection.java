package org.brakewright.kernel.thermal;

/**
 * Air that rises by itself along a hot upright face: Nu = 0.59 Ra^(1/4), for 10^4 to 10^9 (F. P. Incropera, D. P. DeWitt,
 * Fundamentals of Heat and Mass Transfer, ch. 9, from memory).
 */
public final class NaturalConvection {
    private static final double GRAVITY = 9.80665;

    private NaturalConvection() {}

    /**
     * Heat transfer coefficient, W/(m2 K).
     *
     * @param air at the mean of both temperatures
     * @param height m
     * @param surface K
     * @param ambient K
     */
    public static double coefficient(Air air, double height, double surface, double ambient) {
        double momentum = air.viscosity() / air.density();
        double buoyancy = GRAVITY * Math.abs(surface - ambient) / (0.5 * (surface + ambient));
        double rayleigh = buoyancy * height * height * height * air.prandtl() / (momentum * momentum);
        return 0.59 * Math.sqrt(Math.sqrt(rayleigh)) * air.conductivity() / height;
    }

    /** Forced and natural coefficient together, by the third root of their third powers (the same book, from memory). */
    public static double with(double forced, double natural) {
        return Math.cbrt(forced * forced * forced + natural * natural * natural);
    }
}
