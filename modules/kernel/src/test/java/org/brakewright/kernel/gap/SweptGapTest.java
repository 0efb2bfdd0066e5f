package org.brakewright.kernel.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The smallest gap along a swing against a circle's closed form and against a fine walk along the swing. */
class SweptGapTest {
    private static final double TOLERANCE = 1e-5;

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    /** Geometry: a ball that hangs 0.25 m below its pivot swings toward one 0.3 m from it and stops short of it. */
    @Test
    void stopsShort() {
        Swing swing = new Swing(Bodies.ball(new Point(0, 0, -0.25), 0.02), new Point(0, 0, 0), new Point(0, -2, 0));
        ConvexBody other = Bodies.ball(new Point(0.3 * Math.sin(1), 0, -0.3 * Math.cos(1)), 0.01);
        SweptGap swept = SweptGap.of(swing, other, 0, 0.6, TOLERANCE);
        double between = Math.sqrt(0.25 * 0.25 + 0.3 * 0.3 - 2 * 0.25 * 0.3 * Math.cos(0.4));
        assertThat(swept.angle()).isEqualTo(0.6);
        assertThat(swept.gap().clearance()).isCloseTo(between - 0.03, within(1e-12));
        assertThat(SweptGap.of(swing, other, 0.6, 0, TOLERANCE).angle()).isEqualTo(0.6);
    }

    /** Steps of the walk are so short that it may miss by no more than half a step of the farthest corner. */
    @ParameterizedTest
    @MethodSource("seeds")
    void fineWalk(int seed) {
        Random random = new Random(seed);
        Swing swing = new Swing(Bodies.any(random), Bodies.random(random, 0.3), Bodies.random(random, 1));
        ConvexBody still = Bodies.any(random);
        SweptGap swept = SweptGap.of(swing, still, -0.2, 0.6, TOLERANCE);
        int steps = 2000;
        double walked = IntStream.rangeClosed(0, steps)
                .mapToDouble(i -> NearestPoints.between(swing.at(-0.2 + 0.8 * i / steps), still)
                        .clearance())
                .min()
                .orElseThrow();
        double found = swept.gap().clearance();
        assertThat(swept.gap().bound()).isLessThanOrEqualTo(1.001 * TOLERANCE);
        assertThat(found).isLessThanOrEqualTo(walked + swept.gap().bound());
        assertThat(found).isGreaterThanOrEqualTo(walked - swing.reach() * 0.8 / steps / 2 - 1e-12);
        assertThat(NearestPoints.between(swing.at(swept.angle()), still).clearance())
                .isEqualTo(found);
    }

    @Test
    void refusesWhatIsNoSwing() {
        ConvexBody ball = Bodies.ball(new Point(0, 0, 0), 0.1);
        assertThatIllegalArgumentException().isThrownBy(() -> new Swing(ball, new Point(0, 0, 0), new Point(0, 0, 0)));
        Swing swing = new Swing(ball, new Point(0, 0, 0), new Point(1, 0, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> SweptGap.of(swing, ball, 0, 1, 0));
    }
}
