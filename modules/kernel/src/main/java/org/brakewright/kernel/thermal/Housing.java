package org.brakewright.kernel.thermal;

/**
 * Caliper, or back plate with wheel cylinder, as one lump.
 *
 * @param capacity J/K
 * @param area that meets the air, m2
 * @param length of that area along the air, m
 * @param airflow factor on forced cooling
 * @param fromLinings conductance from the linings through abutments, W/K
 */
public record Housing(double capacity, double area, double length, double airflow, double fromLinings) {
    public Housing {
        Require.positive("capacity", capacity);
        Require.positive("area", area);
        Require.positive("length", length);
        Require.notNegative("airflow", airflow);
        Require.notNegative("fromLinings", fromLinings);
    }

    /** Heat given to the air, W. */
    public double loss(double temperature, Surroundings around) {
        Air film = Air.at(0.5 * (temperature + around.ambient()));
        double forced = airflow * PlateConvection.coefficient(film, length, around.roadSpeed());
        double natural = NaturalConvection.coefficient(film, length, temperature, around.ambient());
        return area * NaturalConvection.with(forced, natural) * (temperature - around.ambient());
    }
}
