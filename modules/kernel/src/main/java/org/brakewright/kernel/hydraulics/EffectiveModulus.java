package org.brakewright.kernel.hydraulics;

/**
 * Stiffness of a liquid with free gas in it, and of the pipe around it: compliances add up.
 *
 * <p>1/Be = gas share/(n p) + liquid share/Bl, with pressures absolute. {@link #shrinkingGas} takes the gas share at
 * the pressure itself and is the one for brake work; {@link #constantShare} keeps the share of the atmosphere, as
 * M. G. Rabie, Fluid Power Engineering, eqs 2.49-2.57 does, and is pessimistic above a few bar.
 *
 * @param freeGasShare gas volume over total volume at atmosphere, 0 to below 1
 * @param polytropicExponent 1 isothermal to 1.4 adiabatic
 * @param liquidModulus bulk modulus of the liquid alone, Pa
 * @param atmosphere absolute pressure at which the share is meant, Pa
 */
public record EffectiveModulus(
        double freeGasShare, double polytropicExponent, double liquidModulus, double atmosphere) {
    public EffectiveModulus {
        Demand.within("freeGasShare", freeGasShare, freeGasShare >= 0 && freeGasShare < 1, "0 to below 1");
        Demand.within("polytropicExponent", polytropicExponent, polytropicExponent >= 1, "1 or more");
        Demand.positive("liquidModulus", liquidModulus);
        Demand.positive("atmosphere", atmosphere);
    }

    /** Modulus (Pa) at an absolute pressure (Pa) with the gas share left as at atmosphere. */
    public double constantShare(double absolutePressure) {
        return ofShare(freeGasShare, absolutePressure);
    }

    /** Modulus (Pa) at an absolute pressure (Pa) with the gas share taken at that pressure. */
    public double shrinkingGas(double absolutePressure) {
        return ofShare(gasShare(absolutePressure), absolutePressure);
    }

    /** Gas volume over total volume at an absolute pressure (Pa). */
    public double gasShare(double absolutePressure) {
        double gas = freeGasShare * Math.pow(atmosphere / absolutePressure, 1 / polytropicExponent);
        double liquid = (1 - freeGasShare) * (1 - (absolutePressure - atmosphere) / liquidModulus);
        return gas / (gas + liquid);
    }

    private double ofShare(double share, double absolutePressure) {
        return 1 / (share / (polytropicExponent * absolutePressure) + (1 - share) / liquidModulus);
    }

    /**
     * Modulus (Pa) of liquid, gas and a thin pipe wall: 1/Be = D/(E t) + 1/Bl + share/Bg. Source: H. E. Merritt,
     * Hydraulic Control Systems, sec. 2-2.
     *
     * @param liquidModulus of the liquid alone, Pa
     * @param gasShare gas volume over total volume at the working pressure, 0 to 1
     * @param gasModulus n p at the absolute working pressure, Pa
     * @param diameterOverWall D/t of the pipe
     * @param youngsModulus of the pipe, Pa
     */
    public static double thinPipe(
            double liquidModulus, double gasShare, double gasModulus, double diameterOverWall, double youngsModulus) {
        return 1 / (diameterOverWall / youngsModulus + 1 / liquidModulus + gasShare / gasModulus);
    }
}
