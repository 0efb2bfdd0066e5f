package org.brakewright.analysis.resolve;

import static org.brakewright.analysis.resolve.Default.estimate;
import static org.brakewright.analysis.resolve.Default.practice;

/** What is assumed of heat when the builder does not say, SI, each with range and basis. */
final class HeatDefaults {
    static final Default AMBIENT = estimate(293.15, 273.15, 313.15, "a mild day; a hot one is 20 K more");
    static final Default ROTATING_SHARE = estimate(0.04, 0.02, 0.10, "wheels and tyres, clutch pressed");
    static final Default ONWARD_SPEED = estimate(16.7, 8.3, 22.2, "a gentle drive at 60 km/h");
    static final Default EMISSIVITY = estimate(0.5, 0.25, 0.8, "between a bright rubbed face and rust");
    static final Default AIRFLOW = estimate(0.6, 0.3, 1.0, "a brake inside a wheel without ducts");
    static final Default ROTOR_LIMIT = practice(873.15, 773.15, 973.15, "iron that glows cracks soon");
    static final Default DISC_THICKNESS = estimate(10.0e-3, 8.0e-3, 14.0e-3, "a solid disc");
    static final Default VENTED_THICKNESS = estimate(20.0e-3, 18.0e-3, 28.0e-3, "a vented disc");
    static final Default VENT_COUNT = estimate(36, 24, 48, "passages of a vented disc");
    static final Default DRUM_WIDTH = estimate(45.0e-3, 30.0e-3, 65.0e-3, "drums of cars");
    static final Default PAD_THICKNESS = estimate(9.0e-3, 4.0e-3, 14.0e-3, "pads between worn and new");
    static final Default SHOE_THICKNESS = estimate(4.5e-3, 2.0e-3, 7.0e-3, "linings between worn and new");
    static final Default LINING_LIMIT = estimate(723.15, 573.15, 823.15, "street linings give up within 300 to 550 °C");
    static final Default FADE_FROM = estimate(573.15, 473.15, 673.15, "street linings hold to 200 to 400 °C");
    static final Default HOUSING_MASS = estimate(3.0, 1.5, 5.0, "an iron caliper, or back plate and cylinder");
    static final Default PISTON_TRANSFER = estimate(150, 60, 400, "steel cups on steel back plates");

    static final Default LOG_NOISE = estimate(0.2, 0.05, 0.5, "satellite and wheel speeds at ten or more a second");

    private static final double IRON = 7200;
    private static final double RIM = 10.0e-3;
    private static final double DRUM_WALL = 8.0e-3;

    private HeatDefaults() {}

    /** Outside diameter of a disc by the radius in m at which its pads act. */
    static Default discDiameter(double effectiveRadius) {
        double diameter = 2 * (effectiveRadius + 22e-3);
        return estimate(diameter, diameter - 16e-3, diameter + 16e-3, "pads some 45 mm high about their radius");
    }

    /** Outside diameter of a drum by its rubbed radius in m. */
    static Default drumDiameter(double radius) {
        return estimate(2 * (radius + RIM), 2 * (radius + 0.5 * RIM), 2 * (radius + 2 * RIM), "a rim of some 10 mm");
    }

    /** Mass of a disc from the iron (m3) of its rubbed ring. */
    static Default discMass(double ring) {
        double mass = IRON * ring;
        return estimate(1.25 * mass, 1.05 * mass, 1.6 * mass, "the iron of the rubbed ring and a quarter for the hat");
    }

    /** Mass of a drum by outside diameter and width in m. */
    static Default drumMass(double diameter, double width) {
        double iron = IRON * DRUM_WALL * Math.PI * diameter * (width + diameter / 4);
        return estimate(iron, 0.7 * iron, 1.4 * iron, "a drum with a wall of 8 mm all over");
    }

    /** Area of one pad by that of one rubbed face, m2. */
    static Default padArea(double face) {
        return estimate(0.15 * face, 0.10 * face, 0.20 * face, "a pad covers some 55 degrees of its face");
    }

    /** Area of one shoe's lining by the rubbed area of the drum, m2. */
    static Default shoeArea(double swept) {
        return estimate(0.30 * swept, 0.22 * swept, 0.36 * swept, "a lining covers some 110 degrees of the drum");
    }
}
