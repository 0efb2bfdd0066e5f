package org.brakewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Examples for builders are in docs/fileformat/quantities.md and tested from there by {@link QuantitiesPageTest}. */
class QuantityReaderTest {

    private static Quantity read(String text, Dimension expected) {
        return switch (QuantityReader.read(text, expected)) {
            case Reading.Read read -> read.quantity();
            case Reading.Refused refused -> throw new AssertionError(refused.reason());
        };
    }

    private static Reading.Refused refused(String text, Dimension expected) {
        return switch (QuantityReader.read(text, expected)) {
            case Reading.Read read -> throw new AssertionError("read as " + read.quantity());
            case Reading.Refused refused -> refused;
        };
    }

    /** Seven eighths of an inch of 25.4 mm; the text is kept, trimmed. */
    @Test
    void keepsTheFractionThatWasTyped() {
        Quantity bore = read(" 7/8 in ", Dimension.LENGTH);
        assertThat(bore.written()).isEqualTo("7/8 in");
        assertThat(bore.unit()).contains(Unit.INCH);
        assertThat(bore.in(Unit.MILLIMETRE)).isCloseTo(22.225, within(1e-12));
        assertThat(bore.tolerance()).isZero();
    }

    /** Each text means seven eighths or one and one eighth of an inch by the meaning of its signs. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "⅞ in | 22.225",
                "7⁄8 in | 22.225",
                "0.875\" | 22.225",
                ".875 inch | 22.225",
                "7/8-in | 22.225",
                "+7 / 8 in | 22.225",
                "8.75e-1 in | 22.225",
                "1⅛″ | 28.575",
                "1-⅛ in | 28.575",
                "1–1/8 in | 28.575",
                "1\u00a01/8\u202fin | 28.575",
                "1 1/8in | 28.575",
                "−1-1/8 in | -28.575",
                "0.09375 ft | 28.575",
                "7' 6\" | 2286",
                "7 ft. 6 in | 2286",
                "6 feet 0-1/2 in | 1841.5"
            })
    void readsEveryWayToTypeALength(String text, double millimetres) {
        assertThat(read(text, Dimension.LENGTH).in(Unit.MILLIMETRE)).isCloseTo(millimetres, within(1e-9));
    }

    /** Values and bounds by arithmetic on the text itself. */
    @ParameterizedTest
    @CsvSource({
        "480 ± 20 mm, LENGTH, 0.46, 0.50",
        "480 mm +- 20, LENGTH, 0.46, 0.50",
        "48 cm + / - 20 mm, LENGTH, 0.46, 0.50",
        "480 mm ± 1 in, LENGTH, 0.4546, 0.5054",
        "-480 mm ± 5 %, LENGTH, -0.504, -0.456",
        "40 cm to 450 mm, LENGTH, 0.40, 0.45",
        "3/4 to 7/8 in, LENGTH, 0.01905, 0.022225",
        "-5..5 deg, ANGLE, -0.0872664626, 0.0872664626",
        "0.40 ± 0.04, RATIO, 0.36, 0.44",
        "0.40 ± 10 %, RATIO, 0.36, 0.44",
        "18 ± 2 %, RATIO, 0.16, 0.20",
        "18 % ± 2, RATIO, 0.16, 0.20",
        "18 % ± 2 %, RATIO, 0.16, 0.20",
        "0.5 % ± 0.1 %, RATIO, 0.004, 0.006",
        "5:1 ± 2 %, RATIO, 4.9, 5.1",
        "15 to 18 %, RATIO, 0.15, 0.18",
        "20 °C ± 5 K, TEMPERATURE, 288.15, 298.15",
        "20 to 30 °C, TEMPERATURE, 293.15, 303.15",
        "10 °C ± 10 %, TEMPERATURE_DIFFERENCE, 9, 11"
    })
    void readsBounds(String text, Dimension expected, double low, double high) {
        Quantity quantity = read(text, expected);
        assertThat(quantity.low()).isCloseTo(low, within(1e-9));
        assertThat(quantity.high()).isCloseTo(high, within(1e-9));
    }

    @Test
    void leavesAPlainNumberWithoutUnit() {
        assertThat(read("0.40", Dimension.RATIO).unit()).isEmpty();
        assertThat(read("18 %", Dimension.RATIO).unit()).contains(Unit.PERCENT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "  ",
                "mm",
                "-",
                "±",
                "± 5 mm",
                "5 mm ±",
                "..",
                "to",
                "5 to mm",
                "5..",
                "..5 mm",
                "1..2..3 mm",
                "5:",
                ":1",
                "5:0 mm",
                "0/0 in",
                "1/0 in",
                "NaN",
                "Infinity mm",
                "1e999 mm",
                "0x10 mm",
                "1d mm",
                "12² mm",
                "5⁴ mm",
                "٣ mm",
                "7/8.5 in",
                "7/8/2 in",
                "1.5/2 in",
                "1 1 mm",
                "5 mm 3",
                "480 ± 20 ± 5 mm",
                "1e308 km",
                "1e306 mi",
                "~20 mm",
                "<20 mm",
                "5 mm; drop",
                "5\n6 mm",
                "1-8/8 in",
                "5 - 7/8 in",
                "480 mm ± 1:2",
                "480 mm ± NaN",
                "480 mm ± -5 %",
                "480 mm ± -0",
                "400 psi to 450 mm",
                "400 mm to 450"
            })
    void refusesWhatMakesNoSenseOfALength(String text) {
        assertThat(QuantityReader.read(text, Dimension.LENGTH))
                .isInstanceOfSatisfying(
                        Reading.Refused.class, it -> assertThat(it.reason()).matches("(?s).+[.?]"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"5.2 ± 2 %", "0.40 ± 0.1 %", "18 ± 20 %", "1 ± 5 %"})
    void refusesAPercentThatMayBeOfTwoThings(String text) {
        Reading.Refused refused = refused(text, Dimension.RATIO);
        assertThat(refused.reason()).contains(text).contains("two ways");
        assertThat(refused.offers()).hasSize(2).allSatisfy(offer -> read(offer, Dimension.RATIO));
    }

    @Test
    void refusesEndlessTextWithoutQuotingItAll() {
        assertThat(refused("9".repeat(101) + " mm", Dimension.LENGTH).reason()).hasSizeLessThan(100);
    }

    @Test
    void offersTextsThatCanBeRead() {
        assertThat(refused("480", Dimension.LENGTH).offers())
                .startsWith("480 mm", "480 in")
                .allSatisfy(offer -> read(offer, Dimension.LENGTH));
        assertThat(refused("900 pis", Dimension.PRESSURE).offers()).startsWith("900 psi");
        assertThat(refused("90 lbf tf", Dimension.TORQUE).offers()).startsWith("90 lbf ft");
    }

    @Test
    void saysWhatAUnitOfAnotherFieldIs() {
        assertThat(refused("900 psi", Dimension.LENGTH).reason())
                .isEqualTo("In \"900 psi\", psi is a pressure; a length is due here, for example mm or in.");
        assertThat(refused("5 lb", Dimension.PRESSURE).reason()).contains("lb is a mass or a force");
        assertThat(refused("18 %", Dimension.LENGTH).reason()).contains("% is a plain number");
    }

    /** Kilograms are no force (SI brochure); 40 kgf is 40 x 9.80665 N. */
    @Test
    void doesNotTakeKilogramsForAForce() {
        Reading.Refused refused = refused("40 kg", Dimension.FORCE);
        assertThat(refused.reason()).contains("kgf");
        assertThat(refused.offers()).containsExactly("40 kgf");
        assertThat(read("40 kgf", Dimension.FORCE).si()).isCloseTo(392.266, within(1e-9));
    }

    /** Turkish has another small I, German another decimal mark; neither may matter. */
    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "de-DE", "ar-EG", "en-US"})
    void doesNotDependOnTheLocale(String tag) {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            assertThat(read("1.5 IN", Dimension.LENGTH).si()).isCloseTo(0.0381, within(1e-12));
            assertThat(QuantityWriter.write(0.0381, Unit.MILLIMETRE)).isEqualTo("38.1 mm");
        } finally {
            Locale.setDefault(before);
        }
    }
}
