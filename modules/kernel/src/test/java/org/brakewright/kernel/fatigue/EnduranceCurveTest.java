package org.brakewright.kernel.fatigue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class EnduranceCurveTest {
    /**
     * DNV-RP-C203, table 2-1, curves in air: name by class, log10 of the constant of either line, range at the knee at
     * 1e7 cycles; from memory. The table rounds its constants to three places, half a unit of which is 0.12 % of a life.
     */
    @ParameterizedTest
    @CsvSource({
        "90, 12.164, 15.606, 52.63",
        "80, 12.010, 15.350, 46.78",
        "71, 11.855, 15.091, 41.52",
        "63, 11.699, 14.832, 36.84",
        "50, 11.398, 14.330, 29.24",
        "36, 10.970, 13.617, 21.05"
    })
    void linesOfAPublishedTable(double detail, double first, double beyond, double knee) {
        EnduranceCurve curve = new EnduranceCurve(detail * 1e6, 3, 1e7, 5, 0.2);
        assertThat(Math.log10(curve.cycles(100e6)) + 3 * 2).isCloseTo(first, within(6e-3));
        assertThat(Math.log10(curve.cycles(10e6)) + 5 * 1).isCloseTo(beyond, within(11e-3));
        assertThat(curve.kneeRange()).isCloseTo(knee * 1e6, withinPercentage(0.5));
    }

    /** EN 1993-1-9, section 7.1: knee at 0.737 of the class, 0.549 of that again at 1e8 cycles. */
    @Test
    void rangesOfTheStandard() {
        EnduranceCurve curve = Detail.STEEL_WELD_TOE.curve();
        assertThat(curve.kneeRange() / curve.range()).isCloseTo(0.737, within(5e-4));
        assertThat(curve.cycles(0.549 * curve.kneeRange())).isCloseTo(1e8, withinPercentage(0.5));
    }

    /** Closed form: 97.725 of 100 lie above the mean less two standard deviations, half above the mean. */
    @Test
    void shareThatOutlives() {
        EnduranceCurve curve = Detail.BOLT_TENSION.curve();
        double life = curve.cycles(120e6);
        assertThat(curve.survival(List.of(new StressCycles(120e6, life)))).isCloseTo(0.9772499, within(1e-7));
        double mean = life * Math.pow(10, 0.4);
        assertThat(curve.survival(List.of(new StressCycles(120e6, mean)))).isCloseTo(0.5, within(1e-9));
        assertThat(curve.survival(List.of(new StressCycles(0, 1e9)))).isEqualTo(1);
        assertThat(curve.survival(List.of(new StressCycles(120e6, 100 * life)))).isLessThan(1e-9);
    }

    /** Range, cycles and chance are one relation, read three ways, on either line. */
    @ParameterizedTest
    @CsvSource({"3e4, 0.5", "2e6, 0.9772499", "8e7, 0.999", "4e8, 0.9"})
    void rangeAndCyclesAreRoundTrips(double cycles, double survival) {
        EnduranceCurve curve = Detail.STEEL_AT_HOLE.curve();
        double range = curve.rangeFor(cycles, survival);
        assertThat(curve.cycles(range, survival)).isCloseTo(cycles, withinPercentage(1e-7));
        assertThat(curve.survival(List.of(new StressCycles(range, cycles)))).isCloseTo(survival, within(1e-9));
        assertThat(curve.repeats(List.of(new StressCycles(range, 1)), survival))
                .isCloseTo(cycles, withinPercentage(1e-7));
    }

    /** A class is the range that is stood two million times, by its definition in EN 1993-1-9. */
    @ParameterizedTest
    @EnumSource(Detail.class)
    void everyDetailStandsItsClassTwoMillionTimes(Detail detail) {
        assertThat(detail.curve().cycles(detail.curve().range())).isCloseTo(2e6, withinPercentage(1e-9));
    }

    @Test
    void whatNoDetailCanHave() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new EnduranceCurve(71e6, 3, 1e6, 5, 0.2))
                .withMessageContaining("kneeCycles");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Detail.BOLT_SHEAR.curve().cycles(50e6, 1))
                .withMessageContaining("survival");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StressCycles(-1, 1))
                .withMessageContaining("range");
    }
}
