package org.brakewright.kernel.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the definition promises: no point farther off than the noise, and nothing kept of a straight line. */
class BendsTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void noPointIsFartherOffThanTheNoise(long seed) {
        Random chance = new Random(seed);
        double noise = 0.4 * chance.nextDouble();
        double[] at = new double[400];
        double[] values = new double[at.length];
        for (int i = 1; i < at.length; i++) {
            at[i] = at[i - 1] + 0.05 + chance.nextDouble();
            values[i] = values[i - 1] + chance.nextGaussian();
        }
        int[] kept = Bends.of(at, values, noise);
        assertThat(kept).startsWith(0).endsWith(at.length - 1).hasSizeLessThanOrEqualTo(at.length);
        for (int i = 1; i < kept.length; i++) {
            for (int between = kept[i - 1]; between <= kept[i]; between++) {
                double share = (at[between] - at[kept[i - 1]]) / (at[kept[i]] - at[kept[i - 1]]);
                double line = values[kept[i - 1]] + share * (values[kept[i]] - values[kept[i - 1]]);
                assertThat(values[between]).isCloseTo(line, within(noise + 1e-12));
            }
        }
    }

    /** A braking from 30 to 10 m/s with noise of up to 0.1 m/s: falls of the noise are no braking. */
    @Test
    void noiseIsNoBraking() {
        Random chance = new Random(11);
        double[] at = IntStream.range(0, 201).mapToDouble(i -> 0.1 * i).toArray();
        double[] values = IntStream.range(0, 201)
                .mapToDouble(i -> Math.clamp(40 - 2 * at[i], 10, 30) + 0.2 * (chance.nextDouble() - 0.5))
                .toArray();
        int[] all = IntStream.range(0, 201).toArray();
        double braked = braked(values, Bends.of(at, values, 0.2));
        assertThat(braked).isCloseTo(0.5 * (900 - 100), within(0.1 * 2 * (30 + 10)));
        assertThat(braked(values, all)).isGreaterThan(1.1 * braked);
    }

    @Test
    void refusesWhatIsNoCurve() {
        assertThatIllegalArgumentException().isThrownBy(() -> Bends.of(new double[1], new double[1], 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Bends.of(new double[2], new double[3], 0));
        assertThatIllegalArgumentException().isThrownBy(() -> Bends.of(new double[2], new double[2], -1));
    }

    /** Energy for each kg of all falls of the speed, J. */
    private static double braked(double[] speeds, int[] at) {
        double sum = 0;
        for (int i = 1; i < at.length; i++) {
            double from = speeds[at[i - 1]];
            double to = speeds[at[i]];
            sum += Math.max(0, 0.5 * (from * from - to * to));
        }
        return sum;
    }
}
