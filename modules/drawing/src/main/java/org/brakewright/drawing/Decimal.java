package org.brakewright.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as text: a point, no exponent, no grouping, no trailing zeros, the same in every country. */
public final class Decimal {
    private Decimal() {}

    /** The number with at most {@code places} decimals, halves rounded away from zero; IllegalArgumentException when it is not finite. */
    public static String text(double value, int places) {
        Demand.finite("value", value);
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
