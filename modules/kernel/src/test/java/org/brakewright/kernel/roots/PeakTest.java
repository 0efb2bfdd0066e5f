package org.brakewright.kernel.roots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Functions whose greatest value is known by calculus (closed form). */
class PeakTest {
    @Test
    void findsTheTopOfAParabolaAndOfAKink() {
        assertThat(Peak.between(x -> -(x - 0.3) * (x - 0.3), -1, 2, 7, 1e-9)).isCloseTo(0.3, within(1e-7));
        assertThat(Peak.between(x -> Math.min(2 * x, 1 - x), 0, 1, 9, 1e-9)).isCloseTo(1.0 / 3, within(1e-8));
    }

    @Test
    void staysAtAnEndThatIsTheGreatest() {
        assertThat(Peak.between(x -> x, 0, 5, 4, 1e-9)).isEqualTo(5);
        assertThat(Peak.between(x -> -x, 0, 5, 4, 1e-9)).isEqualTo(0);
    }

    @Test
    void takesTheLeastOfAFlatTop() {
        assertThat(Peak.between(x -> Math.min(x, 0.5), 0, 1, 11, 1e-9)).isCloseTo(0.5, within(1e-7));
        assertThat(Peak.between(x -> 1, 0, 1, 11, 1e-9)).isEqualTo(0);
    }

    /** sin x + 0.3 x on 0 to 10 has several tops; the greatest is where cos x = -0.3 beyond 2 pi. */
    @Test
    void choosesAmongSeveralTops() {
        double top = 2 * Math.PI + Math.acos(-0.3);
        assertThat(Peak.between(x -> Math.sin(x) + 0.3 * x, 0, 10, 25, 1e-9)).isCloseTo(top, within(1e-7));
    }
}
