package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Formula: Directive 71/320/EEC Annex II (VERIFIED); UN R13-H Annex 3 the same (from memory). */
class MfddTest {
    /** Closed form: both spellings are one law, since 25.92 = 2 x 3.6 x 3.6. */
    @Test
    void kilometresAndMetresAgree() {
        double kmh = Mfdd.fromKmh(80, 10, 14.5, 61.3);
        assertThat(Mfdd.fromSi(80 / 3.6, 10 / 3.6, 14.5, 61.3)).isCloseTo(kmh, withinPercentage(1e-10));
        assertThat(kmh).isCloseTo(6300 / (25.92 * 46.8), within(1e-12));
    }

    /** Closed form: a steady stop has its own deceleration as mean, whatever the sampling and the delay before it. */
    @ParameterizedTest
    @ValueSource(ints = {41, 42, 43})
    void isTheDecelerationOfASteadyStop(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int run = 0; run < 100; run++) {
            double start = random.nextDouble(5, 60);
            double deceleration = random.nextDouble(1, 10);
            double late = random.nextDouble(0, 20);
            int samples = random.nextInt(8, 200);
            double[] speed = new double[samples];
            double[] distance = new double[samples];
            for (int i = 0; i < samples; i++) {
                speed[i] = i < 2 ? start : start * (1 - (i - 1.0) / (samples - 2));
                distance[i] = i == 0 ? 0 : late + (start * start - speed[i] * speed[i]) / (2 * deceleration);
            }
            assertThat(Mfdd.ofTrace(speed, distance).orElseThrow()).isCloseTo(deceleration, withinPercentage(1e-7));
        }
    }

    /** Closed form: 8 m/s2 over the first half of the distance and 4 over the second average to 6, by distance. */
    @Test
    void averagesOverDistanceNotTime() {
        double middle = Math.sqrt(64 - 2 * 8 * 2.0);
        double end = Math.sqrt(middle * middle - 2 * 4 * 2.0);
        assertThat(Mfdd.fromSi(8, end, 0, 4)).isCloseTo(6, within(1e-12));
    }

    @Test
    void isEmptyForAStopThatWasBrokenOff() {
        assertThat(Mfdd.ofTrace(new double[] {20, 10, 3}, new double[] {0, 20, 30}))
                .isEmpty();
    }

    /** A noisy start that dips below 0.8 v0 and comes back counts from the last crossing: 16 m/s at 30 m, 2 m/s at 60 m. */
    @Test
    void countsFromTheLastCrossing() {
        double[] speed = {20, 15, 17, 16, 2, 0};
        double[] distance = {0, 10, 20, 30, 60, 61};
        assertThat(Mfdd.ofTrace(speed, distance).orElseThrow()).isCloseTo((256 - 4) / (2 * 30.0), within(1e-12));
    }

    @Test
    void refusesATraceThatMakesNoSense() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mfdd.fromSi(10, 20, 0, 5))
                .withMessageContaining("fromSpeed");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mfdd.fromKmh(80, 10, 5, 5))
                .withMessageContaining("toDistance");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Mfdd.ofTrace(new double[] {20, 1}, new double[] {0}))
                .withMessageContaining("distance");
    }
}
