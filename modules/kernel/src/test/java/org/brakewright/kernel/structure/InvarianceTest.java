package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.kernel.structure.Structures.force;
import static org.brakewright.kernel.structure.Structures.solved;

import java.util.Set;
import org.brakewright.kernel.structure.section.Sections;
import org.brakewright.kernel.structure.shell.Sheet;
import org.junit.jupiter.api.Test;

/** What must hold for every structure: forces balance (Newton), and what a does at b, b does at a (Maxwell, Betti). */
class InvarianceTest {
    private static final BeamProperty TUBE =
            new BeamProperty(Sections.rectangularTube(0.03, 0.02, 0.0015), 205e9, 79e9);

    /** A panel with a stiffener along one edge, a bracket on a rigid link, and a sprung corner. */
    private static ShellGrid panel() {
        ShellGrid grid = new ShellGrid(
                6, 5, (u, v) -> new Vector3(0.5 * u, 0.4 * v, 0.05 * u * u - 0.03 * v), new Sheet(1.2e-3, 205e9, 0.3));
        for (int i = 0; i < 6; i++) {
            BeamEnd start = new BeamEnd(grid.node(i, 5), new Vector3(0, 0, 0.01), Set.of());
            BeamEnd end = new BeamEnd(grid.node(i + 1, 5), new Vector3(0, 0, 0.01), Set.of());
            grid.model.add(new Beam("stringer", start, end, new Vector3(0, 0.2, 1), TUBE));
        }
        int bracket = grid.model.node(0.25, 0.2, 0.12);
        grid.model.link(bracket, grid.node(3, 2)).link(bracket, grid.node(3, 3));
        SpringRate rate = new SpringRate(new Vector3(2e5, 1e5, 3e5), new Vector3(10, 20, 30));
        grid.model.add(Spring.toGround("mount", grid.node(6, 0), rate));
        return grid.holdU(true, Support.PIN);
    }

    private static int bracket(ShellGrid grid) {
        return grid.node(6, 5) + 1;
    }

    @Test
    void theGroundBalancesTheLoads() {
        ShellGrid grid = panel();
        Vector3 force = new Vector3(300, -200, 500);
        StructureModel model = grid.build();
        CaseResult result = solved(model, new Load.OnNode(bracket(grid), new Wrench(force, new Vector3(5, 7, -3))));
        Vector3 sum = force;
        Vector3 moment =
                new Vector3(5, 7, -3).plus(model.nodes().get(bracket(grid)).cross(force));
        for (Support support : model.supports()) {
            Wrench reaction = result.reaction(support.node());
            sum = sum.plus(reaction.force());
            moment = moment.plus(model.nodes().get(support.node()).cross(reaction.force()));
        }
        int spring = grid.elements() + 6;
        Wrench mount = result.spring(spring);
        // the spring's answer is what it does to the ground
        Vector3 corner = model.nodes().get(grid.node(6, 0));
        sum = sum.minus(mount.force());
        moment = moment.minus(mount.moment()).minus(corner.cross(mount.force()));
        assertThat(sum.length()).isLessThan(1e-6);
        assertThat(moment.length()).isLessThan(1e-6);
    }

    @Test
    void whatOneDoesAtTheOtherTheOtherDoesAtTheOne() {
        ShellGrid grid = panel();
        StructureModel model = grid.build();
        int corner = grid.node(6, 5);
        double there = solved(model, force(bracket(grid), 100, 0, 0))
                .motion(corner)
                .shift()
                .z();
        Vector3 back =
                solved(model, force(corner, 0, 0, 100)).motion(bracket(grid)).shift();
        assertThat(there).isNotZero();
        assertThat(back.x()).isCloseTo(there, withinPercentage(1e-6));
    }

    /** Two loads together do what each does, added: and one factorisation serves all cases. */
    @Test
    void casesAddUp() {
        ShellGrid grid = panel();
        int corner = grid.node(6, 5);
        StructureModel model = grid.build();
        Load one = force(corner, 0, 0, 100);
        Load other = force(bracket(grid), 0, 50, 0);
        Vector3 both = solved(model, one, other).motion(corner).shift();
        Vector3 first = solved(model, one).motion(corner).shift();
        Vector3 second = solved(model, other).motion(corner).shift();
        assertThat(first.plus(second).minus(both).length()).isLessThan(1e-9 * both.length());
    }

    /** Followers keep their distance from the leader, and stiff arms carry turns. */
    @Test
    void followersMoveWithTheirLeader() {
        ShellGrid grid = panel();
        StructureModel model = grid.build();
        CaseResult result = solved(model, force(bracket(grid), 100, 200, 300));
        Motion leader = result.motion(bracket(grid));
        for (int follower : new int[] {grid.node(3, 2), grid.node(3, 3)}) {
            Vector3 arm = model.nodes().get(follower).minus(model.nodes().get(bracket(grid)));
            Vector3 expected = leader.shift().plus(leader.turn().cross(arm));
            assertThat(result.motion(follower).shift().minus(expected).length()).isCloseTo(0, within(1e-15));
            assertThat(result.motion(follower).turn()).isEqualTo(leader.turn());
        }
    }
}
