package org.brakewright.kernel.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakewright.kernel.fastener.JointLoad.Components;
import org.junit.jupiter.api.Test;

class BoltGroupTest {
    private static final Components NONE = new Components(0, 0, 0);

    private static final BoltGroup FOUR = new BoltGroup(List.of(
            new Point(-0.075, 0.060), new Point(-0.075, -0.060), new Point(0.075, 0.060), new Point(0.075, -0.060)));

    /** Shigley's Mechanical Engineering Design, 9th ed., example 8-7; the book rounds in steps: 21.0 and 14.8 kN. */
    @Test
    void eccentricShear() {
        JointLoad load = new JointLoad(new Point(0.425, 0), new Components(0, -16e3, 0), NONE);
        List<BoltForce> forces = FOUR.share(load);
        // unrounded figures of check-values.md F14
        assertThat(forces.get(0).shear()).isCloseTo(14_788.8, within(0.05));
        assertThat(forces.get(1).shear()).isCloseTo(14_788.8, within(0.05));
        assertThat(forces.get(2).shear()).isCloseTo(20_972.6, within(0.05));
        assertThat(forces.get(3).shear()).isCloseTo(20_972.6, within(0.05));
        // the load is 500 mm right of the left bolts: it turns the group clockwise, so the right bolts get more of it
        assertThat(forces.get(2).shearY()).isNegative();
        assertThat(forces).allSatisfy(force -> assertThat(force.tension()).isZero());
    }

    /** Statics: what the bolts take is what was put in, for a load in every direction and a group askew. */
    @Test
    void sharesAddUpToTheLoad() {
        List<Point> places =
                List.of(new Point(0, 0), new Point(0.08, 0.01), new Point(0.05, 0.07), new Point(-0.02, 0.04));
        Point at = new Point(0.03, -0.02);
        JointLoad load = new JointLoad(at, new Components(100, -250, 400), new Components(7, -11, 13));
        List<BoltForce> forces = new BoltGroup(places).share(load);
        double[] sum = new double[6];
        for (int i = 0; i < 4; i++) {
            BoltForce f = forces.get(i);
            Point arm = places.get(i).minus(at);
            sum[0] += f.shearX();
            sum[1] += f.shearY();
            sum[2] += f.tension();
            sum[3] += arm.y() * f.tension();
            sum[4] -= arm.x() * f.tension();
            sum[5] += arm.x() * f.shearY() - arm.y() * f.shearX();
        }
        assertThat(sum).containsExactly(new double[] {100, -250, 400, 7, -11, 13}, within(1e-9));
    }

    /** Bolts in a row carry a moment that bends them in the row, but cannot be tilted about it. */
    @Test
    void aRowIsNotTilted() {
        BoltGroup row = new BoltGroup(List.of(new Point(0, 0), new Point(0.03, 0.04), new Point(0.06, 0.08)));
        // square to the row, 12 N m over outer bolts 0.1 m apart: 120 N
        JointLoad square = new JointLoad(row.center(), NONE, new Components(12 * 0.8, -12 * 0.6, 0));
        assertThat(row.share(square).get(2).tension()).isCloseTo(120, within(1e-9));
        assertThat(row.share(square).get(0).tension()).isCloseTo(-120, within(1e-9));
        JointLoad alongIt = new JointLoad(row.center(), NONE, new Components(6, 8, 0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> row.share(alongIt))
                .withMessageContaining("bolts");
    }

    @Test
    void aSingleBoltTakesForceButNoMoment() {
        BoltGroup single = new BoltGroup(List.of(new Point(0.01, 0.02)));
        JointLoad through = new JointLoad(new Point(0.01, 0.02), new Components(3, 4, 7), NONE);
        assertThat(single.share(through)).containsExactly(new BoltForce(3, 4, 7));
        JointLoad beside = new JointLoad(new Point(0.02, 0.02), new Components(3, 4, 7), NONE);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> single.share(beside))
                .withMessageContaining("bolts");
    }
}
