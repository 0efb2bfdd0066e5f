package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.brakewright.kernel.structure.Structures.UP;
import static org.brakewright.kernel.structure.Structures.beam;
import static org.brakewright.kernel.structure.Structures.force;

import java.util.List;
import java.util.Set;
import org.brakewright.kernel.structure.Fault.Kind;
import org.brakewright.kernel.structure.section.Sections;
import org.brakewright.kernel.structure.shell.Sheet;
import org.junit.jupiter.api.Test;

/** A model that contradicts itself is refused with all its faults. */
class FaultTest {
    private static final BeamProperty TUBE = new BeamProperty(Sections.roundTube(0.0254, 0.002), 205e9, 79e9);
    private static final Sheet SHEET = new Sheet(1e-3, 205e9, 0.3);

    private final StructureModel.Builder model = StructureModel.builder();
    private final int a = model.node(0, 0, 0);
    private final int b = model.node(1, 0, 0);
    private final int c = model.node(2, 0, 0);

    private List<Fault> faults(Load... loads) {
        StructureOutcome outcome = Solve.solve(model.build(), List.of(LoadCase.of("case", loads)));
        assertThat(outcome).isInstanceOf(StructureOutcome.Refused.class);
        return ((StructureOutcome.Refused) outcome).faults();
    }

    @Test
    void shapes() {
        int same = model.node(1, 0, 0);
        int flat = model.add(beam(b, same, TUBE));
        int along = model.add(new Beam("x", BeamEnd.fixed(a), BeamEnd.fixed(b), new Vector3(2, 0, 0), TUBE));
        int line = model.add(new Shell("x", a, b, c, SHEET));
        int self = model.add(new Spring("x", a, a, Axes.OF_STRUCTURE, SpringRate.axial(1)));
        int unknown = model.add(beam(a, 99, TUBE));
        assertThat(faults())
                .containsExactly(
                        new Fault(Kind.BEAM_WITHOUT_LENGTH, flat),
                        new Fault(Kind.BEAM_UP_ALONG_IT, along),
                        new Fault(Kind.SHELL_WITHOUT_AREA, line),
                        new Fault(Kind.SPRING_TO_ITSELF, self),
                        new Fault(Kind.ELEMENT_NODE_UNKNOWN, unknown));
    }

    @Test
    void links() {
        model.link(a, b).link(c, b).link(b, c).link(a, 42).support(new Support(b, Support.PIN));
        assertThat(faults())
                .contains(
                        new Fault(Kind.FOLLOWS_TWICE, b),
                        new Fault(Kind.LINK_NODE_UNKNOWN, 42),
                        new Fault(Kind.FOLLOWER_SUPPORTED, b));
    }

    @Test
    void linksInACircle() {
        model.link(a, b).link(b, c).link(c, a);
        assertThat(faults()).contains(new Fault(Kind.FOLLOWS_ITSELF, a));
    }

    @Test
    void loads() {
        int beam = model.add(beam(a, b, TUBE));
        model.support(new Support(a, Set.of(Freedom.SHIFT_X))).support(new Support(-3, Support.PIN));
        assertThat(faults(
                        force(7, 1, 0, 0),
                        new Load.OnShell(beam, UP),
                        new Load.OnBeam(5, UP),
                        new Load.Settlement(a, Freedom.SHIFT_Y, 0.1)))
                .containsExactly(
                        new Fault(Kind.SUPPORT_NODE_UNKNOWN, -3),
                        new Fault(Kind.LOAD_NODE_UNKNOWN, 7),
                        new Fault(Kind.LOAD_ELEMENT_UNKNOWN, beam),
                        new Fault(Kind.LOAD_ELEMENT_UNKNOWN, 5),
                        new Fault(Kind.SETTLES_UNHELD, a));
    }

    @Test
    void valuesThatNoPartCanHave() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Sheet(-1, 205e9, 0.3))
                .withMessageContaining("thickness")
                .withMessageContaining("-1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SpringRate.axial(-5))
                .withMessageContaining("shift.x");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Vector3(0, Double.NaN, 0))
                .withMessageContaining("y");
        BeamEnd slides = BeamEnd.releasing(a, Set.of(Freedom.SHIFT_Y));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Beam("x", slides, slides, UP, TUBE))
                .withMessageContaining("released");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Beam("x", slides, BeamEnd.releasing(b, BeamEnd.HINGE), UP, TUBE))
                .withMessageContaining("released");
    }
}
