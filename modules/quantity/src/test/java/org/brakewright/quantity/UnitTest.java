package org.brakewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitTest {

    /**
     * The factors as NIST SP 811 (2008) prints them in appendix B.8, to seven digits (from memory; the exact
     * definitions from which they follow are tested below). Units that are combinations without a row of their own are
     * in {@link #combinations}.
     */
    @ParameterizedTest
    @CsvSource({
        "THOU, 2.54e-5",
        "FOOT, 0.3048",
        "MILE, 1.609344e3",
        "SQUARE_INCH, 6.4516e-4",
        "SQUARE_FOOT, 9.290304e-2",
        "CUBIC_INCH, 1.638706e-5",
        "FLUID_OUNCE, 2.957353e-5",
        "OUNCE, 2.834952e-2",
        "POUND_FORCE, 4.448222",
        "KILOGRAM_FORCE, 9.80665",
        "PSI, 6.894757e3",
        "KSI, 6.894757e6",
        "MILLION_PSI, 6.894757e9",
        "INCH_OF_MERCURY, 3.386389e3",
        "MILLIMETRE_OF_MERCURY, 1.333224e2",
        "KILOGRAM_FORCE_PER_SQUARE_CENTIMETRE, 9.80665e4",
        "POUND_FORCE_FOOT, 1.355818",
        "POUND_FORCE_INCH, 1.129848e-1",
        "KILOGRAM_FORCE_METRE, 9.80665",
        "MILE_PER_HOUR, 4.4704e-1",
        "KILOMETRE_PER_HOUR, 2.777778e-1",
        "FREE_FALL, 9.80665",
        "FOOT_PER_SECOND_SQUARED, 0.3048",
        "POUND_FORCE_PER_INCH, 1.751268e2",
        "FOOT_POUND_FORCE, 1.355818",
        "BTU, 1.055056e3",
        "HORSEPOWER, 7.456999e2",
        "METRIC_HORSEPOWER, 7.354988e2",
        "POUND_PER_CUBIC_INCH, 2.767990e4",
        "POUND_PER_CUBIC_FOOT, 1.601846e1",
        "BTU_PER_POUND_FAHRENHEIT, 4.1868e3",
        "BTU_PER_HOUR_FOOT_FAHRENHEIT, 1.730735",
        "BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT, 5.678263",
        "POUND_SQUARE_FOOT, 4.214011e-2",
        "POUND_SQUARE_INCH, 2.926397e-4",
        "DEGREE, 1.745329e-2",
        "REVOLUTION_PER_MINUTE, 1.047198e-1"
    })
    void hasThePrintedFactor(Unit unit, double factor) {
        // half a unit in the seventh digit
        assertThat(unit.differenceToSi(1)).isCloseTo(factor, within(factor * 5.1e-7));
    }

    /** International agreement: inch 25.4 mm, pound 0.45359237 kg, standard free fall 9.80665 m/s2, all exact. */
    @Test
    void restsOnTheExactDefinitions() {
        assertThat(Unit.INCH.toSi(1)).isEqualTo(0.0254);
        assertThat(Unit.POUND.toSi(1)).isEqualTo(0.45359237);
        assertThat(Unit.FREE_FALL.toSi(1)).isEqualTo(9.80665);
        // product of the two exact factors, NIST SP 811 footnote to the pound-force
        assertThat(Unit.POUND_FORCE.toSi(1)).isEqualTo(4.4482216152605);
    }

    /** Freezing and boiling water, and the point where both scales meet (textbook: 32 °F, 212 °F, -40). */
    @Test
    void knowsWhereTemperatureScalesBegin() {
        assertThat(Unit.CELSIUS.toSi(0)).isEqualTo(273.15);
        assertThat(Unit.FAHRENHEIT.toSi(32)).isCloseTo(273.15, within(1e-12));
        assertThat(Unit.FAHRENHEIT.toSi(212)).isCloseTo(373.15, within(1e-12));
        assertThat(Unit.FAHRENHEIT.toSi(-40)).isCloseTo(Unit.CELSIUS.toSi(-40), within(1e-12));
        // a tolerance of 9 °F is 5 K (ratio of the degrees, 5/9)
        assertThat(Unit.FAHRENHEIT.differenceToSi(9)).isCloseTo(5, within(1e-12));
        assertThat(Unit.CELSIUS.differenceFromSi(5)).isEqualTo(5);
    }

    /** The same physical size in two spellings; each ratio follows from the meaning of the symbols alone. */
    static Stream<Arguments> combinations() {
        double psi = Unit.PSI.toSi(1);
        return Stream.of(
                Arguments.of(Unit.MILLIMETRE_PER_BAR, 1e-3 / 1e5),
                Arguments.of(Unit.MILLIMETRE_PER_HUNDRED_BAR, 1e-3 / 1e7),
                Arguments.of(Unit.MILLIMETRE_PER_MEGAPASCAL, 1e-3 / 1e6),
                Arguments.of(Unit.INCH_PER_THOUSAND_PSI, 0.0254 / (1000 * psi)),
                Arguments.of(Unit.THOU_PER_THOUSAND_PSI, 0.0000254 / (1000 * psi)),
                Arguments.of(Unit.CC_PER_BAR, 1e-6 / 1e5),
                Arguments.of(Unit.CC_PER_MEGAPASCAL, 1e-6 / 1e6),
                Arguments.of(Unit.CC_PER_THOUSAND_PSI, 1e-6 / (1000 * psi)),
                Arguments.of(Unit.CUBIC_INCH_PER_THOUSAND_PSI, 1.6387064e-5 / (1000 * psi)),
                Arguments.of(Unit.CUBIC_MILLIMETRE_PER_BAR, 1e-9 / 1e5),
                Arguments.of(Unit.CC_PER_METRE, 1e-6),
                Arguments.of(Unit.CC_PER_FOOT, 1e-6 / 0.3048),
                Arguments.of(Unit.CUBIC_INCH_PER_FOOT, 1.6387064e-5 / 0.3048),
                Arguments.of(Unit.NEWTON_PER_MILLIMETRE, 1e3),
                Arguments.of(Unit.KILONEWTON_PER_MILLIMETRE, 1e6),
                Arguments.of(Unit.KILOGRAM_FORCE_PER_MILLIMETRE, 9806.65),
                // slug = lbf s2/ft
                Arguments.of(Unit.SLUG_SQUARE_FOOT, 4.4482216152605 * 0.3048),
                Arguments.of(Unit.GRAM_PER_CC, 1e-3 / 1e-6));
    }

    @ParameterizedTest
    @MethodSource
    void combinations(Unit unit, double factor) {
        assertThat(unit.toSi(1)).isCloseTo(factor, within(factor * 1e-12));
    }

    /** Definition of the inverse; seeded numbers over twelve decades. */
    @ParameterizedTest
    @EnumSource
    void comesBackFromSi(Unit unit) {
        Random random = new Random(19590701);
        for (int i = 0; i < 200; i++) {
            double number = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(12) - 6);
            assertThat(unit.differenceFromSi(unit.differenceToSi(number)))
                    .isCloseTo(number, within(Math.abs(number) * 1e-14));
            assertThat(unit.fromSi(unit.toSi(number))).isCloseTo(number, within(1e-12 + Math.abs(number) * 1e-14));
        }
    }

    @ParameterizedTest
    @EnumSource
    void isFoundByEachOfItsNames(Unit unit) {
        assertThat(unit.names())
                .allSatisfy(
                        name -> assertThat(Unit.find(name, unit.dimension())).contains(unit));
    }

    /** Spellings of the trade; the meaning of each is common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "lb, FORCE, POUND_FORCE",
        "lb, MASS, POUND",
        "g, MASS, GRAM",
        "g, ACCELERATION, FREE_FALL",
        "ft-lb, TORQUE, POUND_FORCE_FOOT",
        "ft-lb, ENERGY, FOOT_POUND_FORCE",
        "lbf·ft, TORQUE, POUND_FORCE_FOOT",
        "Nm, TORQUE, NEWTON_METRE",
        "N·m, TORQUE, NEWTON_METRE",
        "PSI, PRESSURE, PSI",
        "cu. in., VOLUME, CUBIC_INCH",
        "mm², AREA, SQUARE_MILLIMETRE",
        "m/s^2, ACCELERATION, METRE_PER_SECOND_SQUARED",
        "in., LENGTH, INCH",
        "″, LENGTH, INCH",
        "µm, LENGTH, MICROMETRE",
        "℃, TEMPERATURE, CELSIUS",
        "C, TEMPERATURE_DIFFERENCE, CELSIUS_DIFFERENCE"
    })
    void isFoundByTradeSpelling(String text, Dimension dimension, Unit unit) {
        assertThat(Unit.find(text, dimension)).contains(unit);
    }

    /** SI brochure: m is milli, M is mega; a slip of the shift key is a factor of 10^9. */
    @ParameterizedTest
    @CsvSource({"mPa, PRESSURE", "mJ, ENERGY", "mm/mPa, LENGTH_PER_PRESSURE", "nm, LENGTH", "MW, POWER", "'', LENGTH"})
    void isNotFoundByAnotherPrefix(String text, Dimension dimension) {
        assertThat(Unit.find(text, dimension)).isEmpty();
    }
}
