package org.brakewright.kernel.thermal;

/**
 * Dry air at the pressure of sea level.
 *
 * @param density kg/m3
 * @param viscosity dynamic, Pa s
 * @param conductivity W/(m K)
 * @param prandtl number
 */
public record Air(double density, double viscosity, double conductivity, double prandtl) {
    private static final double PRESSURE = 101_325;
    private static final double GAS_CONSTANT = 287.05;
    private static final double SPECIFIC_HEAT = 1007;
    private static final double ICE = 273.15;

    public Air {
        Require.positive("density", density);
        Require.positive("viscosity", viscosity);
        Require.positive("conductivity", conductivity);
        Require.positive("prandtl", prandtl);
    }

    /**
     * Air at a temperature in K: ideal gas; viscosity and conductivity by Sutherland's law (F. M. White, Viscous Fluid Flow,
     * from memory), within 2 % of handbook tables from 250 to 800 K.
     */
    public static Air at(double temperature) {
        Require.positive("temperature", temperature);
        double viscosity = sutherland(1.716e-5, 111, temperature);
        double conductivity = sutherland(0.0241, 194, temperature);
        double heat = SPECIFIC_HEAT * (1 + 1.2e-4 * Math.max(0, temperature - 300));
        return new Air(
                PRESSURE / (GAS_CONSTANT * temperature), viscosity, conductivity, viscosity * heat / conductivity);
    }

    /** Reynolds number of a speed in m/s along a length in m. */
    public double reynolds(double speed, double length) {
        return density * speed * length / viscosity;
    }

    private static double sutherland(double atIce, double constant, double temperature) {
        double ratio = temperature / ICE;
        return atIce * ratio * Math.sqrt(ratio) * (ICE + constant) / (temperature + constant);
    }
}
