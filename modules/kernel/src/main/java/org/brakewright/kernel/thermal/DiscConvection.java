package org.brakewright.kernel.thermal;

/**
 * Air over the faces of a disc that turns with the road's speed.
 *
 * <p>R. Limpert, Brake Design and Safety, ch. 3 (from memory): 0.70 (k/D) Re^0.55 up to Re = 240,000 and 0.04 (k/D) Re^0.8 above,
 * Re from road speed and disc diameter. At 240,000 the published branches are a quarter apart; they are blended from 192,000 to 300,000.
 */
public final class DiscConvection {
    private static final Blend BLEND = new Blend(2.4e5, 1.25);

    private DiscConvection() {}

    /** Heat transfer coefficient, W/(m2 K), of a disc of a diameter in m at a road speed in m/s. */
    public static double coefficient(Air air, double diameter, double speed) {
        double reynolds = air.reynolds(speed, diameter);
        double number = BLEND.between(reynolds, laminar(reynolds), turbulent(reynolds));
        return number * air.conductivity() / diameter;
    }

    /** Nusselt number of the branch below the change-over. */
    public static double laminar(double reynolds) {
        return 0.70 * Math.pow(reynolds, 0.55);
    }

    /** Nusselt number of the branch above the change-over. */
    public static double turbulent(double reynolds) {
        return 0.04 * Math.pow(reynolds, 0.8);
    }
}
