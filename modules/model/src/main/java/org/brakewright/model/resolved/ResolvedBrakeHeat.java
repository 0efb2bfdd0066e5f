package org.brakewright.model.resolved;

import java.util.List;
import java.util.Optional;

/**
 * What heat sees of the brake of one wheel, in SI.
 *
 * @param rotor disc or drum
 * @param lining pads or linings
 * @param pistonArea of all pistons of the wheel, m2
 * @param housingMass caliper, or back plate with wheel cylinder, kg
 * @param pistonTransfer heat that pistons pass from lining to fluid, W/(m2 K) of their area
 * @param airflow air speed at the brake over road speed
 * @param releasedGap air between rotor and each lining when released, m
 */
public record ResolvedBrakeHeat(
        Rotor rotor,
        Lining lining,
        double pistonArea,
        double housingMass,
        double pistonTransfer,
        double airflow,
        double releasedGap) {

    /** Disc or drum. */
    public sealed interface Rotor {
        /** kg. */
        double mass();

        /** Rubbed by the linings, m2. */
        double sweptArea();

        /** Of the faces that radiate. */
        double emissivity();

        /** Most temperature, K. */
        double limit();
    }

    /**
     * An iron disc.
     *
     * @param mass kg
     * @param outerDiameter m
     * @param innerDiameter of the rubbed band, m
     * @param thickness m
     * @param vents empty for a solid disc
     * @param emissivity of its faces
     * @param limit K
     */
    public record Disc(
            double mass,
            double outerDiameter,
            double innerDiameter,
            double thickness,
            Optional<Vents> vents,
            double emissivity,
            double limit)
            implements Rotor {
        @Override
        public double sweptArea() {
            return Math.PI / 2 * (outerDiameter * outerDiameter - innerDiameter * innerDiameter);
        }
    }

    /**
     * Passages of a vented disc.
     *
     * @param gap between the cheeks, m
     * @param count of passages
     */
    public record Vents(double gap, double count) {}

    /**
     * An iron drum.
     *
     * @param mass kg
     * @param outerDiameter m
     * @param rubbedRadius m
     * @param width of the rubbed band, m
     * @param emissivity of its outside
     * @param limit K
     */
    public record Drum(
            double mass, double outerDiameter, double rubbedRadius, double width, double emissivity, double limit)
            implements Rotor {
        @Override
        public double sweptArea() {
            return 2 * Math.PI * rubbedRadius * width;
        }
    }

    /**
     * Pads or linings.
     *
     * @param area of one, m2
     * @param thickness m
     * @param limit most temperature, K
     * @param curve brake force at the same pressure over that of the working brake, against the rotor's temperature, rising
     * @param curveGiven whether it is the maker's curve
     */
    public record Lining(double area, double thickness, double limit, List<Point> curve, boolean curveGiven) {

        /** Brake force at the same pressure over that of the working brake, at a rotor temperature in K; level beyond the curve's ends. */
        public double force(double temperature) {
            Point before = curve.getFirst();
            for (Point point : curve) {
                if (temperature <= point.temperature()) {
                    return before.toward(point, temperature);
                }
                before = point;
            }
            return before.force();
        }

        /** Whether a temperature (K) lies above all that the curve knows. */
        public boolean beyondCurve(double temperature) {
            return temperature > curve.getLast().temperature();
        }
    }

    /**
     * A point of that curve.
     *
     * @param temperature K
     * @param force over that of the working brake
     */
    public record Point(double temperature, double force) {
        double toward(Point next, double at) {
            if (at <= temperature || next.temperature <= temperature) {
                return at <= temperature ? force : next.force;
            }
            return force + (next.force - force) * (at - temperature) / (next.temperature - temperature);
        }
    }
}
