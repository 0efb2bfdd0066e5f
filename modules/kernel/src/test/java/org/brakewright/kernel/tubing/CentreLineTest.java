package org.brakewright.kernel.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Where a bent tube runs and what it comes near to; closed forms. */
class CentreLineTest {
    private static final Route SQUARE =
            new Route(List.of(new Point(0, 0, 0), new Point(0.2, 0, 0), new Point(0.2, 0.2, 0)), List.of(0.05));

    /** Two straights of 0.15 m and a quarter round, or 18 chords of 5 degrees for it. */
    @Test
    void isAsLongAsTheTube() {
        double length = BendTable.of(SQUARE).developedLength();
        assertThat(length).isCloseTo(0.3 + 0.05 * Math.PI / 2, within(1e-12));
        assertThat(CentreLine.of(SQUARE).length())
                .isCloseTo(0.3 + 18 * 2 * 0.05 * Math.sin(Math.toRadians(2.5)), within(1e-12));
    }

    /** Every point of the bend lies one radius from its middle at (0.15, 0.05). */
    @Test
    void bendsRoundItsMiddle() {
        Point middle = new Point(0.15, 0.05, 0);
        List<Point> points = CentreLine.of(SQUARE).points();
        assertThat(points.subList(1, points.size() - 1))
                .allSatisfy(point -> assertThat(point.minus(middle).length()).isCloseTo(0.05, within(1e-12)));
    }

    /** A ball of 20 mm whose middle stands 80 mm aside of the first leg, at 100 mm: 60 mm are left. */
    @Test
    void nearestToABall() {
        CentreLine.Nearest nearest = CentreLine.of(SQUARE).nearest(new Envelope.Ball(new Point(0.1, -0.08, 0), 0.02));
        assertThat(nearest.distance()).isCloseTo(0.06, within(1e-9));
        assertThat(nearest.along()).isCloseTo(0.1, within(1e-6));
    }

    /** From the corner of a box, 30 and 40 mm away: 50 mm. Inside, the nearest face counts. */
    @Test
    void distanceOfABox() {
        Envelope box = new Envelope.Box(new Point(0, 0, 0), new Point(0.1, 0.2, 0.3));
        assertThat(box.distance(new Point(0.13, 0.24, 0.1))).isCloseTo(0.05, within(1e-12));
        assertThat(box.distance(new Point(0.05, 0.19, 0.15))).isCloseTo(-0.01, within(1e-12));
    }

    /** Beside the wall, off the end, off the rim (3-4-5), and inside. */
    @Test
    void distanceOfACylinder() {
        Envelope bar = new Envelope.Cylinder(new Point(0, 0, 0), new Point(0, 0, 0.5), 0.02);
        assertThat(bar.distance(new Point(0.05, 0, 0.2))).isCloseTo(0.03, within(1e-12));
        assertThat(bar.distance(new Point(0.01, 0, 0.54))).isCloseTo(0.04, within(1e-12));
        assertThat(bar.distance(new Point(0.05, 0, 0.54))).isCloseTo(0.05, within(1e-12));
        assertThat(bar.distance(new Point(0.015, 0, 0.2))).isCloseTo(-0.005, within(1e-12));
    }

    /** A straight tube through the axis of a column lies its whole radius inside. */
    @Test
    void throughAColumn() {
        CentreLine straight = new CentreLine(List.of(new Point(-1, 0, 0), new Point(1, 0, 0)));
        CentreLine.Nearest nearest =
                straight.nearest(new Envelope.Cylinder(new Point(0.3, 0, -1), new Point(0.3, 0, 1), 0.025));
        assertThat(nearest.distance()).isCloseTo(-0.025, within(1e-7));
        assertThat(nearest.at().x()).isCloseTo(0.3, within(1e-6));
    }

    /** Brute force: 200 places on every piece of 60 seeded tubes; no place is nearer, and the nearest is no further off. */
    @Test
    void noPlaceIsNearer() {
        Random random = new Random(6);
        for (int tube = 0; tube < 60; tube++) {
            CentreLine line = new CentreLine(
                    Stream.generate(() -> place(random)).limit(12).toList());
            for (Envelope envelope : List.of(
                    new Envelope.Ball(place(random), 0.1),
                    new Envelope.Box(new Point(-0.2, -0.1, -0.3), new Point(0.1, 0.2, 0.3)),
                    new Envelope.Cylinder(place(random), place(random), 0.05))) {
                double least = Double.POSITIVE_INFINITY;
                double step = 0;
                for (int i = 1; i < line.points().size(); i++) {
                    Point from = line.points().get(i - 1);
                    Point way = line.points().get(i).minus(from);
                    step = Math.max(step, way.length() / 200);
                    for (int part = 0; part <= 200; part++) {
                        least = Math.min(least, envelope.distance(from.plus(way.times(part / 200.0))));
                    }
                }
                double found = line.nearest(envelope).distance();
                assertThat(found).isBetween(least - step / 2, least + 1e-9);
            }
        }
    }

    private static Point place(Random random) {
        return new Point(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    }

    @Test
    void refusesWhatTakesNoRoom() {
        Point zero = new Point(0, 0, 0);
        assertThatIllegalArgumentException().isThrownBy(() -> new Envelope.Box(zero, zero));
        assertThatIllegalArgumentException().isThrownBy(() -> new Envelope.Cylinder(zero, zero, 0.1));
        assertThatIllegalArgumentException().isThrownBy(() -> new Envelope.Ball(zero, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new CentreLine(List.of(zero)));
    }
}
