package org.brakewright.kernel.thermal;

/** Air over the outside of a drum: 0.1 (k/D) Re^(2/3) (R. Limpert, Brake Design and Safety, ch. 3, from memory). */
public final class DrumConvection {
    private DrumConvection() {}

    /** Heat transfer coefficient, W/(m2 K), of a drum of an outside diameter in m at a road speed in m/s. */
    public static double coefficient(Air air, double diameter, double speed) {
        return 0.1 * Math.pow(air.reynolds(speed, diameter), 2.0 / 3) * air.conductivity() / diameter;
    }
}
