package org.brakewright.kernel.roots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class CrossingTest {
    /** Closed form: x^2 = 2. */
    @Test
    void findsTheSquareRootOfTwo() {
        assertThat(Crossing.between(x -> x * x - 2, 0, 2).orElseThrow()).isCloseTo(Math.sqrt(2), within(1e-12));
    }

    /** Closed form: a broken line with its kink at 3 reaches 5 at 3 + 2/0.25 = 11. */
    @Test
    void findsTheFarSideOfAKink() {
        assertThat(Crossing.between(x -> Math.min(x, 3) + 0.25 * Math.max(0, x - 3) - 5, 0, 100)
                        .orElseThrow())
                .isCloseTo(11, within(1e-10));
    }

    @Test
    void returnsAnEndThatIsZero() {
        assertThat(Crossing.between(x -> x, 0, 1)).hasValue(0);
        assertThat(Crossing.between(x -> x - 1, 0, 1)).hasValue(1);
    }

    @Test
    void isEmptyWithoutAChangeOfSign() {
        assertThat(Crossing.between(x -> x * x + 1, -1, 1)).isEmpty();
    }
}
