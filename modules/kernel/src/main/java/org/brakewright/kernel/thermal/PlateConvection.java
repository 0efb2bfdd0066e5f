package org.brakewright.kernel.thermal;

/** Air along a plate, which stands for a caliper or a back plate: Nu = 0.037 Re^0.8 Pr^(1/3), turbulent from the front edge. */
public final class PlateConvection {
    private PlateConvection() {}

    /**
     * Heat transfer coefficient, W/(m2 K), over a length in m at a speed in m/s (F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and
     * Mass Transfer, ch. 7, from memory).
     */
    public static double coefficient(Air air, double length, double speed) {
        double number = 0.037 * Math.pow(air.reynolds(speed, length), 0.8) * Math.cbrt(air.prandtl());
        return number * air.conductivity() / length;
    }
}
