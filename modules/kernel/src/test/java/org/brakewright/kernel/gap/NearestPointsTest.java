package org.brakewright.kernel.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Gaps against closed forms of geometry, against alternating projections, and against what must hold of any gap. */
class NearestPointsTest {
    private static final Point ORIGIN = new Point(0, 0, 0);

    static IntStream seeds() {
        return IntStream.range(0, 200);
    }

    /** Distance of the centres less both radii; overlapping balls too, for only their roundings overlap. */
    @ParameterizedTest
    @CsvSource({"0.3, 0.4, 0.0, 0.1, 0.05, 0.35", "0.0, 0.0, 0.12, 0.1, 0.05, -0.03"})
    void ballAndBall(double x, double y, double z, double first, double second, double clearance) {
        Gap gap = NearestPoints.between(Bodies.ball(ORIGIN, first), Bodies.ball(new Point(x, y, z), second));
        assertThat(gap.clearance()).isCloseTo(clearance, within(1e-15));
        assertThat(gap.touching()).isEqualTo(clearance <= 0);
    }

    /** Upright boxes: root of the sum of squares of what lies between them along each axis, 0 where they overlap. */
    @ParameterizedTest
    @MethodSource("seeds")
    void boxAndBox(int seed) {
        Random random = new Random(seed);
        Point low = Bodies.random(random, 0.3);
        Point size = new Point(random.nextDouble() * 0.3, random.nextDouble() * 0.3, random.nextDouble() * 0.3);
        Point high = low.plus(size);
        Point unit = new Point(0.1, 0.2, 0.05);
        double x = Math.max(0, Math.max(low.x() - unit.x(), -high.x()));
        double y = Math.max(0, Math.max(low.y() - unit.y(), -high.y()));
        double z = Math.max(0, Math.max(low.z() - unit.z(), -high.z()));
        Gap gap = NearestPoints.between(Bodies.box(ORIGIN, unit), Bodies.box(low, high));
        assertThat(gap.clearance()).isCloseTo(Math.sqrt(x * x + y * y + z * z), within(1e-12));
        assertThat(gap.first().minus(gap.second()).length()).isCloseTo(gap.clearance(), within(1e-12));
        assertThat(gap.bound()).isLessThan(1e-12);
    }

    /** A leaning rod over a level plate: height of its lower end less its radius. */
    @Test
    void capsuleAndPlane() {
        ConvexBody rod = new ConvexBody(List.of(new Point(0.1, 0, 0.25), new Point(-0.2, 0.1, 0.4)), 0.02);
        ConvexBody floor = new ConvexBody(
                List.of(new Point(-2, -2, 0), new Point(2, -2, 0), new Point(2, 2, 0), new Point(-2, 2, 0)), 0);
        Gap gap = NearestPoints.between(rod, floor);
        assertThat(gap.clearance()).isCloseTo(0.23, within(1e-13));
        assertThat(gap.first().minus(new Point(0.1, 0, 0.23)).length()).isLessThan(1e-12);
        assertThat(gap.second().minus(new Point(0.1, 0, 0)).length()).isLessThan(1e-12);
    }

    /** Two rods that pass square to each other: the shift of their axes less both radii. */
    @Test
    void crossingRods() {
        ConvexBody along = new ConvexBody(List.of(new Point(-1, 0, 0), new Point(1, 0, 0)), 0.01);
        ConvexBody across = new ConvexBody(List.of(new Point(0.3, -1, 0.06), new Point(0.3, 1, 0.06)), 0.02);
        assertThat(NearestPoints.between(along, across).clearance()).isCloseTo(0.03, within(1e-13));
    }

    /** Crossing bodies without a rounding part by nothing that is known: 0 and touching. */
    @Test
    void crossingPlates() {
        ConvexBody level = Bodies.box(new Point(-1, -1, 0), new Point(1, 1, 0));
        ConvexBody upright = Bodies.box(new Point(0, -1, -1), new Point(0, 1, 1));
        assertThat(NearestPoints.between(level, upright).touching()).isTrue();
        assertThat(NearestPoints.between(level, upright).clearance()).isZero();
    }

    /**
     * Turned boxes against alternating projections, which converge to the nearest points of two convex sets (W. Cheney, A.
     * A. Goldstein, Proximity maps for convex sets, Proceedings of the American Mathematical Society 10 (1959) 448-450).
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void turnedBoxes(int seed) {
        Random random = new Random(seed);
        Point half = new Point(0.1, 0.04, 0.01);
        Point at = Bodies.random(random, 0.3);
        Point axis = Bodies.random(random, 1);
        double angle = 3 * random.nextDouble();
        ConvexBody box = Bodies.box(half.times(-1), half);
        ConvexBody other = Bodies.shifted(Bodies.turned(box, axis, angle), at);
        Point here = ORIGIN;
        Point there = at;
        for (int i = 0; i < 5000; i++) {
            here = clamped(there, half);
            Point local = turned(here.minus(at), axis, -angle);
            there = turned(clamped(local, half), axis, angle).plus(at);
        }
        double projected = here.minus(there).length();
        assertThat(NearestPoints.between(box, other).clearance())
                .isLessThan(projected + 1e-12)
                .isCloseTo(projected, within(1e-4));
    }

    private static Point clamped(Point p, Point half) {
        return new Point(
                Math.clamp(p.x(), -half.x(), half.x()),
                Math.clamp(p.y(), -half.y(), half.y()),
                Math.clamp(p.z(), -half.z(), half.z()));
    }

    private static Point turned(Point p, Point axis, double angle) {
        return Bodies.turned(Bodies.ball(p, 0), axis, angle).corners().getFirst();
    }

    /** Geometry: which body is named first, a turn of both and a mirror change no gap; the bound stays small. */
    @ParameterizedTest
    @MethodSource("seeds")
    void sameFromEverywhere(int seed) {
        Random random = new Random(seed);
        ConvexBody one = Bodies.any(random);
        ConvexBody other = Bodies.any(random);
        Point axis = Bodies.random(random, 1);
        double gap = NearestPoints.between(one, other).clearance();
        assertThat(NearestPoints.between(one, other).bound()).isLessThan(1e-11);
        assertThat(NearestPoints.between(other, one).clearance()).isCloseTo(gap, within(1e-11));
        assertThat(NearestPoints.between(Bodies.turned(one, axis, 1), Bodies.turned(other, axis, 1))
                        .clearance())
                .isCloseTo(gap, within(1e-11));
        assertThat(NearestPoints.between(Bodies.mirrored(one), Bodies.mirrored(other))
                        .clearance())
                .isCloseTo(gap, within(1e-11));
    }

    /** Geometry: bodies that stand apart and move apart along the line between their nearest points gain that way. */
    @ParameterizedTest
    @MethodSource("seeds")
    void movingApartNeverCloses(int seed) {
        Random random = new Random(seed);
        ConvexBody one = Bodies.any(random);
        ConvexBody other = Bodies.any(random);
        Gap gap = NearestPoints.between(one, other);
        Point apart = gap.touching() ? ORIGIN : gap.second().minus(gap.first());
        Gap after = NearestPoints.between(one, Bodies.shifted(other, apart));
        double gained = gap.touching() ? 0 : gap.clearance();
        assertThat(after.clearance()).isCloseTo(gap.clearance() + gained, within(1e-10));
    }

    @Test
    void refusesWhatIsNoBody() {
        assertThatIllegalArgumentException().isThrownBy(() -> new ConvexBody(List.of(), 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new ConvexBody(List.of(ORIGIN), -1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Point(Double.NaN, 0, 0));
    }
}
