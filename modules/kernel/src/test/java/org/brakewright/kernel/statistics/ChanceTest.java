package org.brakewright.kernel.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Points, distributions, bands and odds against closed forms. */
class ChanceTest {
    private static final int COUNT = 1 << 12;

    /** Shapes of all kinds: the rectangle, the symmetric triangle, skewed ones and those that lean on an end. */
    static Stream<Distribution> distributions() {
        return Stream.of(
                new Rectangular(-2, 3),
                new Triangular(0, 1, 2),
                new Triangular(0.30, 0.38, 0.45),
                new Triangular(1, 1, 4),
                new Triangular(110e9, 205e9, 205e9));
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void momentsOfDrawnValuesAreTheClosedForms(Distribution distribution) {
        double[] drawn = drawn(distribution, 3);
        double mean = DoubleStream.of(drawn).average().orElseThrow();
        double variance = DoubleStream.of(drawn)
                .map(x -> (x - mean) * (x - mean))
                .average()
                .orElseThrow();
        double u = distribution.standardUncertainty();
        assertThat(mean).isCloseTo(distribution.mean(), within(1e-3 * u));
        assertThat(Math.sqrt(variance)).isCloseTo(u, withinPercentage(0.1));
    }

    @ParameterizedTest
    @MethodSource("distributions")
    void theBandOfDrawnValuesIsTheirQuantiles(Distribution distribution) {
        Band band = Band.of(drawn(distribution, 5));
        double close = 2e-3 * distribution.standardUncertainty();
        assertThat(band.p05()).isCloseTo(distribution.quantile(0.05), within(close));
        assertThat(band.p25()).isCloseTo(distribution.quantile(0.25), within(close));
        assertThat(band.p50()).isCloseTo(distribution.quantile(0.50), within(close));
        assertThat(band.p75()).isCloseTo(distribution.quantile(0.75), within(close));
        assertThat(band.p95()).isCloseTo(distribution.quantile(0.95), within(close));
    }

    /** The area of the triangle left of a value, from its two straight sides. */
    @Test
    void theTrianglesQuantileTurnsItsAreaRound() {
        Triangular triangle = new Triangular(2, 3, 7);
        for (double p = 0; p <= 1; p += 1.0 / 64) {
            double x = triangle.quantile(p);
            double area = x < 3 ? (x - 2) * (x - 2) / (5 * 1) : 1 - (7 - x) * (7 - x) / (5 * 4);
            assertThat(area).isCloseTo(p, within(1e-12));
        }
    }

    @Test
    void aValueWithoutRangeStaysWhereItIs() {
        assertThat(new Rectangular(4, 4).quantile(0.3)).isEqualTo(4);
        assertThat(new Triangular(4, 4, 4).quantile(0.3)).isEqualTo(4);
        assertThat(new Triangular(4, 4, 4).standardUncertainty()).isZero();
    }

    /** Each axis cut into as many slices as there are points: one point a slice, in every dimension and for every seed. */
    @ParameterizedTest
    @ValueSource(longs = {0, 1, -1, 42})
    void everySliceHoldsOnePoint(long seed) {
        for (double[] axis : EvenPoints.of(COUNT, 60, seed)) {
            double[] slices = DoubleStream.of(axis)
                    .map(x -> Math.floor(x * COUNT))
                    .sorted()
                    .toArray();
            for (int slice = 0; slice < COUNT; slice++) {
                assertThat(slices[slice]).isEqualTo(slice);
            }
            assertThat(DoubleStream.of(axis)).allMatch(x -> x > 0 && x < 1);
        }
    }

    /** The first points of the sequence are binary fractions in reflected order: 0, 1/2, 3/4, 1/4 (Sobol', any book). */
    @Test
    void differencesOfPointsAreThoseOfSobolsSequence() {
        long[] digits = DoubleStream.of(EvenPoints.of(4, 1, 9)[0])
                .mapToLong(x -> (long) (x * 0x1p52))
                .toArray();
        assertThat(digits[0] ^ digits[1]).isEqualTo(1L << 51);
        assertThat(digits[0] ^ digits[2]).isEqualTo(3L << 50);
        assertThat(digits[0] ^ digits[3]).isEqualTo(1L << 50);
    }

    @Test
    void aSeedRepeatsAndAnotherDiffers() {
        assertThat(EvenPoints.of(64, 3, 1)).isDeepEqualTo(EvenPoints.of(64, 3, 1));
        assertThat(EvenPoints.of(64, 3, 1)[2]).isNotEqualTo(EvenPoints.of(64, 3, 2)[2]);
    }

    @Test
    void fewerPointsAreTheBeginningOfMore() {
        double[][] few = EvenPoints.of(100, 2, 5);
        double[][] more = EvenPoints.of(200, 2, 5);
        assertThat(few[1]).isEqualTo(Arrays.copyOf(more[1], 100));
    }

    @Test
    void oneResultIsItsOwnBand() {
        assertThat(Band.of(new double[] {7})).isEqualTo(new Band(7, 7, 7, 7, 7));
    }

    @Test
    void neverAndAlwaysAreNotCalledCertain() {
        // Rule of succession: 1 of 102 with 100 trials.
        double error = Math.sqrt(1.0 / 102 * 101 / 102 / 100);
        assertThat(new Odds(0, 100).probability()).isZero();
        assertThat(new Odds(0, 100).standardError()).isCloseTo(error, withinPercentage(1e-9));
        assertThat(new Odds(100, 100).standardError()).isCloseTo(error, withinPercentage(1e-9));
    }

    @Test
    void nonsenseIsRefused() {
        assertThatThrownBy(() -> new Rectangular(2, 1)).hasMessageContaining("2.0, 1.0");
        assertThatThrownBy(() -> new Triangular(0, 3, 2)).hasMessageContaining("0.0, 3.0, 2.0");
        assertThatThrownBy(() -> new Rectangular(0, 1).quantile(1.1)).hasMessageContaining("1.1");
        assertThatThrownBy(() -> new Triangular(0, 1, 2).quantile(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> EvenPoints.of(0, 1, 1)).hasMessageContaining("points");
        assertThatThrownBy(() -> EvenPoints.of(1, 1001, 1)).hasMessageContaining("1001");
        assertThatThrownBy(() -> Band.of(new double[0])).hasMessageContaining("at least one");
        assertThatThrownBy(() -> new Odds(2, 1)).hasMessageContaining("2 of 1");
    }

    private static double[] drawn(Distribution distribution, long seed) {
        return DoubleStream.of(EvenPoints.of(COUNT, 1, seed)[0])
                .map(distribution::quantile)
                .toArray();
    }
}
