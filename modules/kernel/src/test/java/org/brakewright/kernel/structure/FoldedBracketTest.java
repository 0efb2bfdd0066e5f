package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.brakewright.kernel.structure.shell.Sheet;
import org.junit.jupiter.api.Test;

/**
 * A folded bracket, where bending of one leaf meets drilling of the other, against another program: CalculiX 2.20
 * (Debian package calculix-ccx), 20 x 12 and 12 x 16 shells S8R, static, load spread evenly along the top edge. Its
 * shells shear through the thickness and ours do not: a strip twenty times as wide as thick then twists 3 % more (Roark:
 * 1 - 0.63 t/b), which shows in the sideways movement.
 */
class FoldedBracketTest {
    private static final int CELLS = 4;

    /** Floor 0.10 x 0.06 clamped at x = 0, wall 0.08 high at its far end, 3 mm of steel. */
    private static CaseResult bracket() {
        ShellGrid grid = new ShellGrid(
                3 * CELLS,
                9 * CELLS,
                (u, v) -> new Vector3(Math.min(0.1, 0.18 * v), 0.06 * u, Math.max(0, 0.18 * v - 0.1)),
                new Sheet(0.003, 205e9, 0.3));
        grid.holdV(true, Support.CLAMP);
        Load[] loads = new Load[3 * CELLS + 1];
        for (int i = 0; i < loads.length; i++) {
            double share = (i == 0 || i == 3 * CELLS ? 0.5 : 1.0) / (3 * CELLS);
            loads[i] = Structures.force(top(i), -200 * share, 100 * share, -60 * share);
        }
        return Structures.solved(grid.build(), loads);
    }

    private static int top(int i) {
        return 9 * CELLS * (3 * CELLS + 1) + i;
    }

    @Test
    void cornersOfTheTopEdge() {
        CaseResult result = bracket();
        assertClose(result.motion(top(0)).shift(), new Vector3(-4.787588e-3, 1.219283e-3, 2.531801e-3));
        assertClose(result.motion(top(3 * CELLS)).shift(), new Vector3(-4.699350e-3, 1.219312e-3, 1.619941e-3));
    }

    private static void assertClose(Vector3 actual, Vector3 other) {
        assertThat(actual.x()).isCloseTo(other.x(), withinPercentage(1.0));
        assertThat(actual.y()).isCloseTo(other.y(), withinPercentage(3.5));
        assertThat(actual.z()).isCloseTo(other.z(), withinPercentage(1.5));
    }
}
