package org.brakewright.kernel.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Shares of the variance against the closed forms of two functions that the field is measured by: T. Ishigami and T.
 * Homma 1990, and the g-function of A. Saltelli and I. M. Sobol' 1995, both from memory and derived anew here.
 */
class SensitivityTest {
    private static final int COUNT = 1 << 16;

    /** Bins hide the most of a wave of two periods: (4 pi)^2/(12 x 40^2), not a hundredth. */
    private static final double CLOSE = 0.01;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 20_261_125})
    void ishigamiIsSharedAsItsClosedFormSays(long seed) {
        double a = 7;
        double b = 0.1;
        double[][] points = EvenPoints.of(COUNT, 3, seed);
        double[] results = IntStream.range(0, COUNT)
                .mapToDouble(i -> ishigami(a, b, angle(points[0][i]), angle(points[1][i]), angle(points[2][i])))
                .toArray();
        // V1 = (1 + b pi^4/5)^2/2, V2 = a^2/8, V3 = 0; V adds 8 b^2 pi^8/225 of x1 with x3.
        double first = 0.5 * Math.pow(1 + b * Math.pow(Math.PI, 4) / 5, 2);
        double second = a * a / 8;
        double together = 8 * b * b * Math.pow(Math.PI, 8) / 225;
        double all = first + second + together;
        assertThat(VarianceShare.of(points[0], results)).isCloseTo(first / all, within(CLOSE));
        assertThat(VarianceShare.of(points[1], results)).isCloseTo(second / all, within(CLOSE));
        assertThat(VarianceShare.of(points[2], results)).isCloseTo(0, within(CLOSE));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theGFunctionIsSharedAsItsClosedFormSays(long seed) {
        double[] a = {0, 1, 4.5, 9, 99, 99, 99, 99};
        double[][] points = EvenPoints.of(COUNT, a.length, seed);
        double[] results =
                IntStream.range(0, COUNT).mapToDouble(i -> g(a, points, i)).toArray();
        double all = 1;
        for (double each : a) {
            all *= 1 + owned(each);
        }
        for (int i = 0; i < a.length; i++) {
            assertThat(VarianceShare.of(points[i], results))
                    .as("input %d", i)
                    .isCloseTo(owned(a[i]) / (all - 1), within(CLOSE));
        }
    }

    /** What chance alone puts between bins must not be told as an input's doing: its mean over seeds is nothing. */
    @Test
    void anInputThatDoesNothingOwnsNothing() {
        SplittableRandom chance = new SplittableRandom(7);
        double sum = 0;
        for (int trial = 0; trial < 200; trial++) {
            double[] idle = chance.doubles(1024).toArray();
            double[] results = chance.doubles(1024).toArray();
            sum += VarianceShare.of(idle, results);
        }
        // 10 bins of 1024: uncorrected 9/1024 = 0.009 on average; corrected and cut at nothing about 0.4 root(18)/1024.
        assertThat(sum / 200).isLessThan(0.003);
    }

    /** The F-test's numerator: k - 1 degrees of freedom spread by the root of twice as many, over n. */
    @Test
    void theNoiseIsThatOfChanceBetweenBins() {
        assertThat(VarianceShare.noise(4096)).isCloseTo(Math.sqrt(30) / 4096, within(1e-15));
    }

    @Test
    void aResultThatStandsStillIsOwnedByNobody() {
        double[][] points = EvenPoints.of(64, 1, 1);
        assertThat(VarianceShare.of(points[0], new double[64])).isZero();
    }

    @Test
    void tooFewSamplesAreRefused() {
        assertThatThrownBy(() -> VarianceShare.of(new double[15], new double[15]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("15");
        assertThatThrownBy(() -> VarianceShare.of(new double[16], new double[17]))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("17");
    }

    private static double angle(double probability) {
        return new Rectangular(-Math.PI, Math.PI).quantile(probability);
    }

    private static double ishigami(double a, double b, double x1, double x2, double x3) {
        double sine = Math.sin(x2);
        return Math.sin(x1) + a * sine * sine + b * Math.pow(x3, 4) * Math.sin(x1);
    }

    private static double g(double[] a, double[][] points, int sample) {
        double product = 1;
        for (int i = 0; i < a.length; i++) {
            product *= (Math.abs(4 * points[i][sample] - 2) + a[i]) / (1 + a[i]);
        }
        return product;
    }

    private static double owned(double a) {
        return 1 / (3 * (1 + a) * (1 + a));
    }
}
