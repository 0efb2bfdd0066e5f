package org.brakewright.kernel.thermal;

/** The outside of a disc or drum from which air takes heat. */
public sealed interface RotorSurface {

    /** Heat given to air per kelvin, W/K, with air as in the film at the surface (K). */
    double conductance(Air film, Surroundings around, double surface);

    /**
     * Both faces of a disc and its rim.
     *
     * @param diameter outside, m
     * @param area that meets the air, m2
     * @param airflow air speed at the brake over road speed's, as a factor on forced cooling
     */
    record Disc(double diameter, double area, double airflow) implements RotorSurface {
        public Disc {
            check(diameter, area, airflow);
        }

        @Override
        public double conductance(Air film, Surroundings around, double surface) {
            double forced = airflow * DiscConvection.coefficient(film, diameter, around.roadSpeed());
            double natural = NaturalConvection.coefficient(film, diameter, surface, around.ambient());
            return area * NaturalConvection.with(forced, natural);
        }
    }

    /**
     * A disc with passages between its cheeks, which pump their own air.
     *
     * @param outside faces and rim
     * @param vanes one passage
     * @param vaneArea walls of all passages, m2
     * @param innerDiameter at which the passages begin, m
     */
    record VentedDisc(Disc outside, VaneConvection vanes, double vaneArea, double innerDiameter)
            implements RotorSurface {
        public VentedDisc {
            Require.positive("vaneArea", vaneArea);
            Require.positive("innerDiameter", innerDiameter);
        }

        @Override
        public double conductance(Air film, Surroundings around, double surface) {
            double speed = VaneConvection.channelSpeed(outside.diameter(), innerDiameter, around.wheelSpeed());
            return outside.conductance(film, around, surface) + vaneArea * vanes.coefficient(film, speed);
        }
    }

    /**
     * The outside of a drum.
     *
     * @param diameter outside, m
     * @param area that meets the air, m2
     * @param airflow factor on forced cooling
     */
    record Drum(double diameter, double area, double airflow) implements RotorSurface {
        public Drum {
            check(diameter, area, airflow);
        }

        @Override
        public double conductance(Air film, Surroundings around, double surface) {
            double forced = airflow * DrumConvection.coefficient(film, diameter, around.roadSpeed());
            double natural = NaturalConvection.coefficient(film, diameter, surface, around.ambient());
            return area * NaturalConvection.with(forced, natural);
        }
    }

    private static void check(double diameter, double area, double airflow) {
        Require.positive("diameter", diameter);
        Require.positive("area", area);
        Require.notNegative("airflow", airflow);
    }
}
