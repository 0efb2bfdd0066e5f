package org.brakewright.kernel.roots;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.brakewright.kernel.roots.Crossing.Bounds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

    /** Closed form: x^2 = 2, from guesses on the same side and from both sides. */
    @ParameterizedTest
    @CsvSource({"2, 1.9", "0.1, 0.2", "1, 2"})
    void risesToTheSquareRootOfTwo(double first, double second) {
        assertThat(Crossing.rising(x -> x * x - 2, new Bounds(0, 2, 1e-9), first, second))
                .isCloseTo(Math.sqrt(2), within(1e-12));
    }

    /** Closed form: the same broken line, steep before its kink and flat behind. */
    @Test
    void risesPastAKink() {
        assertThat(Crossing.rising(x -> Math.min(x, 3) + 0.25 * Math.max(0, x - 3) - 5, new Bounds(0, 100, 1e-9), 1, 2))
                .isCloseTo(11, within(1e-9));
    }

    /** A step has no place where it is zero: bisection ends at the step, 1/3. */
    @Test
    void endsAtAStep() {
        assertThat(Crossing.rising(x -> x < 1 / 3.0 ? -1 : 1, new Bounds(0, 1, 1e-12), 0.1, 0.9))
                .isCloseTo(1 / 3.0, within(1e-9));
    }

    /** The second method of the same class, on seeded cubics that rise. */
    @Test
    void agreesWithTheBracketingSolver() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 500; i++) {
            double bend = random.nextDouble(0, 5);
            double slope = random.nextDouble(0.1, 5);
            double zero = random.nextDouble(-0.9, 0.9);
            DoubleUnaryOperator cubic = x -> bend * (x * x * x - zero * zero * zero) + slope * (x - zero);
            assertThat(Crossing.rising(cubic, new Bounds(-1, 1, 1e-9), 0, 0.5))
                    .isCloseTo(Crossing.between(cubic, -1, 1).orElseThrow(), within(1e-11));
        }
    }
}
