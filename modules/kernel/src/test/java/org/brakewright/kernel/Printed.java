package org.brakewright.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;

/** Holds a result against a figure as a source prints it: equal to half a unit of the last digit. */
public final class Printed {
    private Printed() {}

    public static void assertPrinted(double result, String figure) {
        BigDecimal printed = new BigDecimal(figure);
        double halfLastDigit = 0.5 * Math.pow(10, -printed.scale()) * (1 + 1e-9);
        assertThat(result).isCloseTo(printed.doubleValue(), within(halfLastDigit));
    }
}
