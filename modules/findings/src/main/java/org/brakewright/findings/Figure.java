package org.brakewright.findings;

import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.quantity.Dimension;

/**
 * A typed value of a finding; the roof gives it unit and words.
 *
 * @param value SI
 * @param dimension kind of quantity
 */
public record Figure(double value, Dimension dimension) {

    /** A deceleration in g. */
    public static Figure g(double decelerationG) {
        return new Figure(decelerationG * Gravity.STANDARD, Dimension.ACCELERATION);
    }

    /** A force in N. */
    public static Figure force(double newton) {
        return new Figure(newton, Dimension.FORCE);
    }

    /** A length in m. */
    public static Figure length(double metre) {
        return new Figure(metre, Dimension.LENGTH);
    }

    /** A pressure in Pa. */
    public static Figure pressure(double pascal) {
        return new Figure(pascal, Dimension.PRESSURE);
    }

    /** A plain number or share. */
    public static Figure ratio(double value) {
        return new Figure(value, Dimension.RATIO);
    }

    /** An angle in rad. */
    public static Figure angle(double radian) {
        return new Figure(radian, Dimension.ANGLE);
    }

    /** A speed in m/s. */
    public static Figure speed(double metrePerSecond) {
        return new Figure(metrePerSecond, Dimension.SPEED);
    }

    /** A temperature in K. */
    public static Figure temperature(double kelvin) {
        return new Figure(kelvin, Dimension.TEMPERATURE);
    }
}
