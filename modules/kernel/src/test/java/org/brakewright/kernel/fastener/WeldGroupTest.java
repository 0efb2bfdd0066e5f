package org.brakewright.kernel.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import java.util.List;
import org.brakewright.kernel.fastener.JointLoad.Components;
import org.junit.jupiter.api.Test;

class WeldGroupTest {
    private static final Components NONE = new Components(0, 0, 0);

    /** Two lines 2 in long and 2 in apart, h = 5/16 in; inch and kip. */
    private static final WeldGroup TWO_LINES = new WeldGroup(
            List.of(new WeldLine(new Point(-1, -1), new Point(-1, 1)), new WeldLine(new Point(1, -1), new Point(1, 1))),
            0.3125);

    /** Shigley solutions manual (2006 numbering), problem 9-5: 1.18 in4; 9.22 ksi/kip with steps rounded. */
    @Test
    void torsionOfTwoLines() {
        assertPrinted(TWO_LINES.unitPolar(), "5.333");
        assertPrinted(TWO_LINES.unitPolar() * TWO_LINES.throat(), "1.18");
        JointLoad kip = new JointLoad(new Point(7, 0), new Components(0, -1, 0), NONE);
        double stress = TWO_LINES.greatestStress(kip);
        // unrounded figures of check-values.md F15, which takes 1.414 h for two throats
        assertThat(stress).isCloseTo(9.23611, within(5e-5));
        assertPrinted(20 / stress, "2.17");
        assertPrinted(11 / stress, "1.19");
    }

    /** Bending away from the surface: unit I of two lines d2/2 times ... = d3/6; stress M (d/2)/(t I). */
    @Test
    void bendingOffTheSurface() {
        JointLoad moment = new JointLoad(new Point(0, 0), NONE, new Components(3, 0, 0));
        double unit = 2.0 * 2 * 2 / 6;
        assertThat(TWO_LINES.greatestStress(moment)).isCloseTo(3 * 1 / (unit * 0.707 * 0.3125), within(1e-9));
    }

    /** A direct pull spreads over all the length. */
    @Test
    void pullOffTheSurface() {
        JointLoad pull = new JointLoad(new Point(0, 0), new Components(0, 0, 6), NONE);
        assertThat(TWO_LINES.length()).isEqualTo(4);
        assertThat(TWO_LINES.greatestStress(pull)).isCloseTo(6 / (4 * 0.707 * 0.3125), within(1e-12));
    }
}
