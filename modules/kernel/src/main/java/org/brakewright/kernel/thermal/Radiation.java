package org.brakewright.kernel.thermal;

/** Heat that a face radiates to surroundings that enclose it: Stefan and Boltzmann. */
public final class Radiation {
    /** W/(m2 K4), CODATA 2018. */
    public static final double STEFAN_BOLTZMANN = 5.670374419e-8;

    private Radiation() {}

    /** W/m2 from a face at one temperature to surroundings at another, both in K. */
    public static double flux(double emissivity, double surface, double ambient) {
        return coefficient(emissivity, surface, ambient) * (surface - ambient);
    }

    /** The same as a heat transfer coefficient, W/(m2 K). */
    public static double coefficient(double emissivity, double surface, double ambient) {
        Require.fraction("emissivity", emissivity);
        return emissivity * STEFAN_BOLTZMANN * (surface * surface + ambient * ambient) * (surface + ambient);
    }
}
