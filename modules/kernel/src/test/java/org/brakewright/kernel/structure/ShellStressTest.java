package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.EnumSet;
import java.util.Set;
import org.brakewright.kernel.structure.shell.Sheet;
import org.junit.jupiter.api.Test;

/**
 * Bending stress of plates and of a strip. S. Timoshenko, S. Woinowsky-Krieger, Theory of Plates and Shells, tables 8
 * and 35, from memory: moments 0.0479 q a2 in the middle of a hinged square plate, 0.0513 q a2 at the middle of a
 * clamped edge and 0.0231 q a2 in its middle, Poisson's ratio 0.3.
 */
class ShellStressTest {
    private static final double SIDE = 0.6;
    private static final double THICK = 1.5e-3;
    private static final double PRESSURE = 2000;
    private static final double UNIT = 6 * PRESSURE * SIDE * SIDE / (THICK * THICK);

    /** A quarter of the plate. */
    private static CaseResult plate(int cells, boolean clamped) {
        ShellGrid grid = new ShellGrid(
                cells, cells, (u, v) -> new Vector3(SIDE / 2 * u, SIDE / 2 * v, 0), new Sheet(THICK, 205e9, 0.3));
        grid.holdU(true, ShellGrid.MIRROR_X).holdV(true, ShellGrid.MIRROR_Y);
        Set<Freedom> edge = clamped ? Support.CLAMP : EnumSet.of(Freedom.SHIFT_Z);
        grid.holdU(false, edge).holdV(false, edge);
        return Structures.solved(grid.build(), grid.everywhere(new Vector3(0, 0, -PRESSURE)));
    }

    @Test
    void middleOfAHingedPlate() {
        // pressed down, the bottom is drawn equally both ways
        CaseResult result = plate(16, false);
        assertThat(result.shell(0).atA().bottom().greatestPrincipal()).isCloseTo(0.0479 * UNIT, withinPercentage(1.0));
        assertThat(result.shell(0).atA().top().leastPrincipal()).isCloseTo(-0.0479 * UNIT, withinPercentage(1.0));
        assertThat(result.shell(0).atA().vonMises()).isCloseTo(0.0479 * UNIT, withinPercentage(1.0));
    }

    @Test
    void middleAndEdgeOfAClampedPlate() {
        CaseResult result = plate(32, true);
        assertThat(result.shell(0).atA().bottom().greatestPrincipal()).isCloseTo(0.0231 * UNIT, withinPercentage(2.0));
        // the last cell of the first row: its lower triangle has corner b at the middle of the edge
        assertThat(result.shell(62).atB().top().greatestPrincipal()).isCloseTo(0.0513 * UNIT, withinPercentage(3.0));
    }

    /** A strip four cells deep, bent in its plane: M c / I at the corners of the cells, M = P (L - x). */
    @Test
    void bendingInThePlane() {
        ShellGrid grid =
                new ShellGrid(40, 4, (u, v) -> new Vector3(u, 0.1 * (v - 0.5), 0), new Sheet(2e-3, 205e9, 0.3));
        grid.holdU(true, Support.CLAMP);
        Load[] push = new Load[5];
        for (int j = 0; j < 5; j++) {
            push[j] = Structures.force(grid.node(40, j), 0, j % 4 == 0 ? -25 : -50, 0);
        }
        CaseResult result = Structures.solved(grid.build(), push);
        double top = 200 * 0.5 * 0.05 / (2e-3 * 1e-3 / 12);
        int upperAtMiddle = 2 * (3 * 40 + 20) + 1;
        assertThat(result.shell(upperAtMiddle).atC().membrane().greatestPrincipal())
                .isCloseTo(top, withinPercentage(4.0));
    }
}
