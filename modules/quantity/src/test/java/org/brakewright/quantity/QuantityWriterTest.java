package org.brakewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityWriterTest {

    /** By rounding the number to four digits, or to the whole when it has more before the point. */
    @ParameterizedTest
    @CsvSource({
        "0, MILLIMETRE, 0 mm",
        "0.022225, MILLIMETRE, 22.22 mm",
        "0.0254, MILLIMETRE, 25.4 mm",
        "0.48, MILLIMETRE, 480 mm",
        "12.3456, MILLIMETRE, 12346 mm",
        "-0.005, MILLIMETRE, -5 mm",
        "0.18, PERCENT, 18 %",
        "293.15, CELSIUS, 20 °C",
        "1.234567e-12, METRE_PER_PASCAL, 1.235e-12 m/Pa",
        "0.00012345, METRE, 0.0001234 m",
        "2.1e11, PASCAL, 2.1e11 Pa"
    })
    void writesFourDigits(double si, Unit unit, String text) {
        assertThat(QuantityWriter.write(si, unit)).isEqualTo(text);
    }

    @Test
    void writesTheTolerance() {
        assertThat(QuantityWriter.write(0.48, 0.02, Unit.MILLIMETRE)).isEqualTo("480 ± 20 mm");
        assertThat(QuantityWriter.write(0.48, 0, Unit.MILLIMETRE)).isEqualTo("480 mm");
        assertThat(QuantityWriter.write(293.15, 5, Unit.CELSIUS)).isEqualTo("20 ± 5 °C");
        assertThat(QuantityWriter.write(0.052, 0.02, Unit.PERCENT)).isEqualTo("5.2 % ± 2 %");
    }

    /** needs.md 4.2 (calc): bore, its diameter in mm, its area in mm2, volume of a 10 mm stroke in ml. */
    @ParameterizedTest
    @CsvSource({
        "5/8 in, 15.88, 198, 1.98",
        "3/4 in, 19.05, 285, 2.85",
        "13/16 in, 20.64, 335, 3.35",
        "7/8 in, 22.22, 388, 3.88",
        "15/16 in, 23.81, 445, 4.45",
        "1 in, 25.40, 507, 5.07",
        "1-1/32 in, 26.19, 539, 5.39",
        "1-1/8 in, 28.57, 641, 6.41",
        "1-1/4 in, 31.75, 792, 7.92"
    })
    void writesBoresAsTheFractionOnThePart(String text, double diameter, double area, double volume) {
        Quantity bore = ((Reading.Read) QuantityReader.read(text, Dimension.LENGTH)).quantity();
        double squareMetres = Math.PI / 4 * bore.si() * bore.si();
        // half a unit in the last printed digit
        assertThat(bore.in(Unit.MILLIMETRE)).isCloseTo(diameter, within(0.00501));
        assertThat(Unit.SQUARE_MILLIMETRE.fromSi(squareMetres)).isCloseTo(area, within(0.5));
        assertThat(Unit.CUBIC_CENTIMETRE.fromSi(squareMetres * 0.010)).isCloseTo(volume, within(0.005));
        assertThat(QuantityWriter.fraction(bore.si())).contains(text);
    }

    @Test
    void writesEverySixtyFourthAndReadsItBack() {
        for (int parts = -256; parts <= 256; parts++) {
            double metres = Unit.INCH.toSi(parts / 64.0);
            String text = QuantityWriter.fraction(metres).orElseThrow();
            Reading.Read back = (Reading.Read) QuantityReader.read(text, Dimension.LENGTH);
            assertThat(back.quantity().si()).as(text).isCloseTo(metres, within(1e-15));
        }
    }

    /** 0.700 in lies 0.0031 in from 45/64; 22.2 mm lies 0.00098 in from 7/8 in; 22.23 mm lies 0.0002 in from it. */
    @Test
    void writesNoFractionForALengthBesideOne() {
        assertThat(QuantityWriter.fraction(Unit.INCH.toSi(0.700))).isEmpty();
        assertThat(QuantityWriter.fraction(0.0222)).isEmpty();
        assertThat(QuantityWriter.fraction(0.02223)).contains("7/8 in");
        assertThat(QuantityWriter.fraction(-0.02223)).contains("-7/8 in");
        assertThat(QuantityWriter.fraction(Double.NaN)).isEmpty();
        assertThat(QuantityWriter.fraction(1e30)).isEmpty();
    }

    /** What is written is read back to the rounding: half a unit in the fourth digit, or second for the tolerance. */
    @ParameterizedTest
    @EnumSource
    void readsBackWhatItWrote(Unit unit) {
        Random random = new Random(454);
        for (int i = 0; i < 200; i++) {
            double number = (0.1 + random.nextDouble()) * Math.pow(10, random.nextInt(16) - 8);
            double si = unit.toSi(number);
            double tolerance = unit.differenceToSi(number * random.nextDouble());
            String text = QuantityWriter.write(si, tolerance, unit);
            Quantity back = ((Reading.Read) QuantityReader.read(text, unit.dimension())).quantity();
            assertThat(back.unit()).as(text).contains(unit);
            assertThat(back.in(unit)).as(text).isCloseTo(number, within(1e-12 + number * 5.01e-4));
            assertThat(back.tolerance()).as(text).isCloseTo(tolerance, within(tolerance * 0.0501));
        }
    }

    @Test
    void refusesToWriteWhatIsNoNumber() {
        assertThatThrownBy(() -> QuantityWriter.write(Double.NaN, Unit.BAR))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
