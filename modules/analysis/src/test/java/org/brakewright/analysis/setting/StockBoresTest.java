package org.brakewright.analysis.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sizes in inches as they are stamped on parts: common practice, no source. */
class StockBoresTest {
    private static final double INCH = 0.0254;

    @ParameterizedTest
    @CsvSource({"0.70, 1, 0.75", "0.70, -1, 0.625", "0.75, 2, 0.875", "1.0, -3, 0.8125", "1.125, 1, 1.25"})
    void stepsFromOneStockSizeToAnother(double bore, int steps, double expected) {
        assertThat(StockBores.master(bore * INCH, steps)).isCloseTo(expected * INCH, within(1e-12));
    }

    /** 19.05 mm and 20.6 mm are the metric names of 3/4 and 13/16 in; 0.72 in lies between two sizes. */
    @ParameterizedTest
    @CsvSource({"19.05, 1, 20.6375", "20.6, -1, 19.05", "20.6, 1, 22.225", "18.288, 1, 19.05", "18.288, -1, 17.78"})
    void stepsFromSizesThatAreNotStamped(double millimetres, int steps, double expected) {
        assertThat(StockBores.master(millimetres / 1000, steps)).isCloseTo(expected / 1000, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0.625, -1", "0.70, -2", "1.25, 1", "1.125, 2", "2.0, 1"})
    void endsWhereNothingIsMade(double bore, int steps) {
        assertThat(StockBores.master(bore * INCH, steps)).isNaN();
    }

    @ParameterizedTest
    @CsvSource({"0.625, 1, 0.6875", "0.70, -1, 0.6875", "0.875, 2, 1.0", "1.0, -2, 0.875"})
    void knowsWheelCylinders(double bore, int steps, double expected) {
        assertThat(StockBores.wheelCylinder(bore * INCH, steps)).isCloseTo(expected * INCH, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0.625, -1", "1.125, 1"})
    void endsWhereNoWheelCylinderIsMade(double bore, int steps) {
        assertThat(StockBores.wheelCylinder(bore * INCH, steps)).isNaN();
    }
}
