package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.kernel.structure.Structures.UP;
import static org.brakewright.kernel.structure.Structures.bar;
import static org.brakewright.kernel.structure.Structures.beam;
import static org.brakewright.kernel.structure.Structures.force;
import static org.brakewright.kernel.structure.Structures.loose;
import static org.brakewright.kernel.structure.Structures.section;
import static org.brakewright.kernel.structure.Structures.solved;

import java.util.List;
import java.util.Set;
import org.brakewright.kernel.structure.section.Sections;
import org.brakewright.kernel.structure.shell.Sheet;
import org.junit.jupiter.api.Test;

/** A structure that can move is not solved: the answer says what moves. Which motions are free follows from statics. */
class LoosePartsTest {
    private static final BeamProperty TUBE = new BeamProperty(Sections.roundTube(0.0254, 0.002), 205e9, 79e9);

    @Test
    void aPartThatTouchesNothingIsNamed() {
        ShellGrid grid = new ShellGrid(4, 4, (u, v) -> new Vector3(u, v, 0), new Sheet(1e-3, 205e9, 0.3));
        grid.holdU(true, Support.CLAMP);
        int from = grid.model.node(3, 0, 0);
        int to = grid.model.node(3, 0.7, 0.4);
        grid.model.add(new Beam("stay", BeamEnd.fixed(from), BeamEnd.fixed(to), UP, TUBE));
        StructureOutcome.Loose loose = loose(grid.build(), force(grid.node(4, 4), 0, 0, 10));
        assertThat(loose.part()).isEqualTo("stay");
        assertThat(loose.parts()).containsExactly("stay");
        assertThat(loose.node()).isIn(from, to);
    }

    /** A square of four bars without a diagonal leans; turned by 30 degrees, so that no axis hides it. */
    @Test
    void aSquareOfBarsLeans() {
        StructureModel.Builder square = StructureModel.builder();
        double c = Math.cos(Math.PI / 6);
        double s = Math.sin(Math.PI / 6);
        int[] at = {square.node(0, 0, 0), square.node(c, s, 0), square.node(c - s, s + c, 0), square.node(-s, c, 0)};
        for (int i = 0; i < 4; i++) {
            square.add(bar(at[i], at[(i + 1) % 4], UP, TUBE));
        }
        square.support(new Support(at[0], Support.PIN)).support(new Support(at[1], Support.PIN));
        square.support(new Support(at[2], Set.of(Freedom.SHIFT_Z)));
        square.support(new Support(at[3], Set.of(Freedom.SHIFT_Z)));
        StructureOutcome.Loose loose = loose(square.build(), force(at[2], 1, 0, 0));
        assertThat(loose.node()).isIn(at[2], at[3]);
        Vector3 shift = loose.motion().shift();
        Vector3 alongTheFixedSide = new Vector3(c, s, 0);
        assertThat(Math.abs(shift.dot(alongTheFixedSide)) / shift.length()).isGreaterThan(1 - 1e-6);
        assertThat(loose.freedom()).isEqualTo(Freedom.SHIFT_X);

        square.add(bar(at[0], at[2], UP, TUBE));
        assertThat(solved(square.build(), force(at[2], 1, 0, 0)).beam(4).tension())
                .isNotZero();
    }

    @Test
    void aPanelHeldAtOneNodeTurnsAboutIt() {
        ShellGrid grid = new ShellGrid(3, 3, (u, v) -> new Vector3(u, v, 0.2 * u), new Sheet(1e-3, 205e9, 0.3));
        grid.hold(grid.node(0, 0), Support.PIN);
        StructureOutcome.Loose loose = loose(grid.build(), force(grid.node(3, 3), 0, 0, 1));
        assertThat(loose.part()).isEqualTo("sheet");
    }

    /** A bar alone does not hold its end sideways: seen without any arithmetic, since nothing is there to resist. */
    @Test
    void theEndOfASingleBarIsLooseSideways() {
        StructureModel.Builder single = StructureModel.builder();
        int foot = single.node(0, 0, 0);
        int head = single.node(1, 0, 0);
        single.add(bar(foot, head, UP, TUBE));
        single.support(new Support(foot, Support.CLAMP)).support(new Support(head, Set.of(Freedom.SHIFT_Y)));
        StructureOutcome.Loose loose = loose(single.build());
        assertThat(loose.node()).isEqualTo(head);
        assertThat(loose.freedom()).isEqualTo(Freedom.SHIFT_Z);
    }

    @Test
    void aMomentOnABallJointFindsNoResistance() {
        StructureModel.Builder tripod = StructureModel.builder();
        int top = tripod.node(0, 0, 1);
        for (int[] at : new int[][] {{1, 0}, {-1, 1}, {-1, -1}}) {
            int foot = tripod.node(at[0], at[1], 0);
            tripod.add(bar(foot, top, new Vector3(0.3, 0.8, 0.1), TUBE));
            tripod.support(new Support(foot, Support.PIN));
        }
        assertThat(solved(tripod.build(), force(top, 1, 2, 3))
                        .motion(top)
                        .shift()
                        .length())
                .isPositive();
        Load moment = new Load.OnNode(top, new Wrench(Vector3.ZERO, new Vector3(0, 5, 0)));
        StructureOutcome.Loose loose = loose(tripod.build(), moment);
        assertThat(loose.freedom()).isEqualTo(Freedom.TURN_Y);
        assertThat(loose.part()).isEqualTo("bar");
    }

    /** A bracket whose own node touches no element is known by what follows it. */
    @Test
    void aLooseBracketIsNamedByItsFollowers() {
        StructureModel.Builder model = StructureModel.builder();
        int bracket = model.node(0, 0, 0.1);
        int foot = model.node(0, 0, 0);
        model.link(bracket, foot);
        SpringRate noTilt = new SpringRate(new Vector3(1e6, 1e6, 1e6), new Vector3(0, 1e3, 1e3));
        model.add(Spring.toGround("bracket bolt", foot, noTilt));
        StructureOutcome.Loose loose = loose(model.build(), force(bracket, 0, 0, 5));
        assertThat(loose.part()).isEqualTo("bracket bolt");
        assertThat(loose.node()).isEqualTo(bracket);
        // it tips about x through the foot: the top goes along y
        assertThat(loose.freedom()).isEqualTo(Freedom.SHIFT_Y);
    }

    /** A thousand beams in a row are soft, not loose: the tip moves by P L3 / 3 E I. */
    @Test
    void aLongChainIsSoftButSound() {
        StructureModel.Builder chain = StructureModel.builder();
        int last = chain.node(0, 0, 0);
        chain.support(new Support(last, Support.CLAMP));
        BeamProperty property = new BeamProperty(section(1, 1, 1), 1, 1);
        for (int i = 1; i <= 1000; i++) {
            int next = chain.node(i, 0, 0);
            chain.add(beam(last, next, property));
            last = next;
        }
        StructureOutcome outcome = Solve.solve(chain.build(), List.of(LoadCase.of("tip", force(last, 0, 0, 1))));
        assertThat(outcome).isInstanceOf(StructureOutcome.Solved.class);
        double tip = ((StructureOutcome.Solved) outcome)
                .cases()
                .getFirst()
                .motion(last)
                .shift()
                .z();
        // conditioning eats 11 of 16 figures
        assertThat(tip / (1e9 / 3)).isBetween(1 - 1e-4, 1 + 1e-4);
    }
}
