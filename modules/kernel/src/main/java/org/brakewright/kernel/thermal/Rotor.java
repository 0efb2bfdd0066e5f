package org.brakewright.kernel.thermal;

/**
 * An iron disc or drum as one lump.
 *
 * @param mass kg
 * @param surface what air cools
 * @param radiatingArea m2
 * @param emissivity of that area
 * @param sweptArea rubbed by the linings, m2
 */
public record Rotor(double mass, RotorSurface surface, double radiatingArea, double emissivity, double sweptArea) {
    public Rotor {
        Require.positive("mass", mass);
        Require.notNegative("radiatingArea", radiatingArea);
        Require.fraction("emissivity", emissivity);
        Require.positive("sweptArea", sweptArea);
    }

    /** J/K at a temperature in K. */
    public double capacity(double temperature) {
        return mass * GreyIron.specificHeat(temperature);
    }

    /** Heat stored since {@link GreyIron#REFERENCE}, J. */
    public double stored(double temperature) {
        return mass * GreyIron.heat(temperature);
    }

    /** Conductance to its surroundings, W/K: air and radiation. */
    public double conductance(double temperature, Surroundings around) {
        Air film = Air.at(0.5 * (temperature + around.ambient()));
        return surface.conductance(film, around, temperature)
                + radiatingArea * Radiation.coefficient(emissivity, temperature, around.ambient());
    }

    /** Heat given to the surroundings, W. */
    public double loss(double temperature, Surroundings around) {
        return conductance(temperature, around) * (temperature - around.ambient());
    }
}
