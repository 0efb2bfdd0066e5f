package org.brakewright.kernel.thermal;

/**
 * Grey flake iron of discs and drums against temperature (K).
 *
 * <p>Straight lines through handbook ranges (from memory): 460 to 540 J/(kg K) at 20 to 200 °C and near 600 at 500 °C; 45 to 55
 * W/(m K), falling with temperature; 7,100 to 7,250 kg/m3. They hold up to about 700 °C, where the iron changes its structure.
 */
public final class GreyIron {
    /** kg/m3. */
    public static final double DENSITY = 7200;

    /** Where stored heat counts as none, K. */
    public static final double REFERENCE = 293.15;

    /** Beyond it the lines are no longer backed by the handbook ranges, K. */
    public static final double HOTTEST = 973.15;

    private static final double HEAT = 470;
    private static final double HEAT_RISE = 0.27;
    private static final double CONDUCTIVITY = 52;
    private static final double CONDUCTIVITY_FALL = 0.02;
    private static final double LEAST_CONDUCTIVITY = 30;

    private GreyIron() {}

    /** J/(kg K). */
    public static double specificHeat(double temperature) {
        return HEAT + HEAT_RISE * (temperature - REFERENCE);
    }

    /** Heat stored since {@link #REFERENCE}, J/kg: the integral of the specific heat. */
    public static double heat(double temperature) {
        double rise = temperature - REFERENCE;
        return rise * (HEAT + 0.5 * HEAT_RISE * rise);
    }

    /** Temperature (K) after taking up heat (J/kg) from a temperature (K) on; the inverse of {@link #heat}. */
    public static double heated(double temperature, double heat) {
        double stored = heat(temperature) + heat;
        double root = HEAT * HEAT + 2 * HEAT_RISE * stored;
        Require.positive("heat left in the iron", root);
        return REFERENCE + (Math.sqrt(root) - HEAT) / HEAT_RISE;
    }

    /** W/(m K). */
    public static double conductivity(double temperature) {
        return Math.max(LEAST_CONDUCTIVITY, CONDUCTIVITY - CONDUCTIVITY_FALL * (temperature - REFERENCE));
    }

    /** J/(m2 K s^0.5). */
    public static double effusivity(double temperature) {
        return HeatPartition.effusivity(DENSITY, specificHeat(temperature), conductivity(temperature));
    }

    /** Thermal diffusivity, m2/s. */
    public static double diffusivity(double temperature) {
        return conductivity(temperature) / (DENSITY * specificHeat(temperature));
    }
}
