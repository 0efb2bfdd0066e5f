package org.brakewright.kernel.hydraulics;

/** Free air in the fluid, squeezed by p V^n = constant. */
public final class EntrainedAir {
    /** Standard atmosphere, ISO 2533, exact, Pa. */
    public static final double ATMOSPHERE = 101325;
    /** Exponent of a slow push: the fluid keeps the air's temperature. */
    public static final double ISOTHERMAL = 1.0;
    /** Exponent of a fast push: ratio of air's specific heats near room temperature, from memory. */
    public static final double ADIABATIC = 1.4;

    private EntrainedAir() {}

    /**
     * Volume (m3) that air gives up: V (1 - (p0/(p0 + p))^(1/n)). Air that dissolves under pressure is not counted, so
     * the figure never exceeds the free volume.
     *
     * @param freeVolume at atmosphere, m3
     * @param gaugePressure not negative, Pa
     * @param polytropicExponent 1 isothermal (slow push) to 1.4 adiabatic (fast push)
     */
    public static double takenUp(double freeVolume, double gaugePressure, double polytropicExponent) {
        double ratio = ATMOSPHERE / (ATMOSPHERE + gaugePressure);
        double compressed = polytropicExponent == ISOTHERMAL ? ratio : Math.pow(ratio, 1 / polytropicExponent);
        return freeVolume * (1 - compressed);
    }
}
