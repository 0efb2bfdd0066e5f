package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.kernel.Printed.assertPrinted;
import static org.brakewright.kernel.structure.Structures.UP;
import static org.brakewright.kernel.structure.Structures.beam;
import static org.brakewright.kernel.structure.Structures.force;
import static org.brakewright.kernel.structure.Structures.solved;

import java.util.List;
import java.util.Set;
import org.brakewright.kernel.structure.section.OpenSections;
import org.brakewright.kernel.structure.section.Section;
import org.brakewright.kernel.structure.section.Sections;
import org.junit.jupiter.api.Test;

/** Beams against the closed forms of Roark's table 8.1; the numbers are row F11 of check-values.md. */
class BeamTableTest {
    private static final double L = 0.4;
    private static final double P = 900;
    private static final Section TUBE = Sections.roundTube(25.4e-3, 2e-3);
    private static final BeamProperty STEEL = new BeamProperty(TUBE, 205e9, 79e9);

    private final StructureModel.Builder model = StructureModel.builder();
    private final int a = model.node(0, 0, 0);
    private final int b = model.node(L / 2, 0, 0);
    private final int c = model.node(L, 0, 0);
    private final int first = model.add(beam(a, b, STEEL));
    private final int second = model.add(beam(b, c, STEEL));

    @Test
    void cantilever() {
        model.support(new Support(a, Support.CLAMP));
        CaseResult result = solved(model.build(), force(c, 0, 0, -P));
        assertPrinted(-result.motion(c).shift().z() * 1e3, "9.2395084");
        assertThat(result.reaction(a).force().z()).isCloseTo(P, within(1e-9));
        assertThat(result.reaction(a).moment().y()).isCloseTo(-P * L, within(1e-9));
        // M c / I at the foot, on both sides
        double stress = P * L * 12.7e-3 / TUBE.bending().y();
        assertThat(result.beam(first).stress(0).greatest()).isCloseTo(stress, withinPercentage(1e-6));
        assertThat(result.beam(first).stress(0).least()).isCloseTo(-stress, withinPercentage(1e-6));
    }

    @Test
    void proppedCantileverWithLoadInTheMiddle() {
        model.support(new Support(a, Support.CLAMP)).support(new Support(c, Set.of(Freedom.SHIFT_Z)));
        CaseResult result = solved(model.build(), force(b, 0, 0, -P));
        assertPrinted(result.reaction(c).force().z(), "281.25");
        // N m; the table row has N mm
        assertPrinted(-result.reaction(a).moment().y(), "67.5");
    }

    @Test
    void bothEndsFixedWithLoadInTheMiddle() {
        model.support(new Support(a, Support.CLAMP)).support(new Support(c, Support.CLAMP));
        CaseResult result = solved(model.build(), force(b, 0, 0, -P));
        assertPrinted(-result.motion(b).shift().z() * 1e3, "0.14436732");
        assertPrinted(-result.reaction(a).moment().y(), "45.0");
        assertPrinted(result.reaction(c).moment().y(), "45.0");
    }

    /** Middle reaction 5 w L / 4 of two equal spans, and the sagging moment 9 w L2 / 128 at 3/8 of the span. */
    @Test
    void twoSpansUnderEvenLoad() {
        double w = 2000;
        for (int node : new int[] {a, b, c}) {
            model.support(new Support(node, Set.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.SHIFT_Z)));
        }
        model.support(new Support(a, Set.of(Freedom.TURN_X)));
        Vector3 load = new Vector3(0, 0, -w);
        CaseResult result = solved(model.build(), new Load.OnBeam(first, load), new Load.OnBeam(second, load));
        double span = L / 2;
        assertThat(result.reaction(b).force().z()).isCloseTo(1.25 * w * span, within(1e-9));
        double sagging = result.beam(first).at(3.0 / 8).moment().y();
        assertThat(Math.abs(sagging)).isCloseTo(9 * w * span * span / 128, within(1e-9));
        double hogging = result.beam(first).at(1).moment().y();
        assertThat(hogging).isCloseTo(w * span * span / 8 * -Math.signum(sagging), within(1e-9));
    }

    /** A hinge at the end of an evenly loaded beam: propped cantilever, 3/8 and 5/8 of the load. */
    @Test
    void aHingePassesNoMoment() {
        StructureModel.Builder hinged = StructureModel.builder();
        int foot = hinged.node(0, 0, 0);
        int head = hinged.node(L, 0, 0);
        int span = hinged.add(new Beam("span", BeamEnd.fixed(foot), BeamEnd.releasing(head, BeamEnd.HINGE), UP, STEEL));
        hinged.support(new Support(foot, Support.CLAMP)).support(new Support(head, Support.CLAMP));
        CaseResult result = solved(hinged.build(), new Load.OnBeam(span, new Vector3(0, 500, -2000)));
        assertThat(result.reaction(head).force().z()).isCloseTo(2000 * L * 3 / 8, within(1e-9));
        assertThat(result.reaction(foot).force().y()).isCloseTo(-500 * L * 5 / 8, within(1e-9));
        assertThat(result.reaction(head).moment().length()).isLessThan(1e-9);
        assertThat(result.beam(span).end().moment().length()).isLessThan(1e-9);
    }

    /** A load at the tip of an offset makes the moment of its arm; the offset itself is stiff. */
    @Test
    void anOffsetIsAStiffArm() {
        StructureModel.Builder offset = StructureModel.builder();
        int foot = offset.node(0, 0, 0);
        int head = offset.node(L, 0.1, 0);
        BeamEnd end = new BeamEnd(head, new Vector3(0, -0.1, 0), Set.of());
        offset.add(new Beam("arm", BeamEnd.fixed(foot), end, UP, STEEL));
        offset.support(new Support(foot, Support.CLAMP));
        Motion tip = solved(offset.build(), force(head, 0, 0, -P)).motion(head);
        double second = TUBE.bending().y();
        double twist = P * 0.1 * L / (79e9 * 2 * second);
        assertThat(tip.turn().x()).isCloseTo(-twist, withinPercentage(1e-8));
        double bending = P * L * L * L / (3 * 205e9 * second);
        assertThat(tip.shift().z()).isCloseTo(-bending - 0.1 * twist, withinPercentage(1e-8));
    }

    /** The same arm as a rigid link instead of an offset. */
    @Test
    void aRigidLinkIsAStiffArm() {
        StructureModel.Builder linked = StructureModel.builder();
        int foot = linked.node(0, 0, 0);
        int end = linked.node(L, 0, 0);
        int middle = linked.node(L, 0.04, 0.01);
        int head = linked.node(L, 0.1, 0);
        linked.add(beam(foot, end, STEEL));
        linked.link(end, middle).link(middle, head).support(new Support(foot, Support.CLAMP));
        Motion tip = solved(linked.build(), force(head, 0, 0, -P)).motion(head);
        double second = TUBE.bending().y();
        double twist = P * 0.1 * L / (79e9 * 2 * second);
        double bending = P * L * L * L / (3 * 205e9 * second);
        assertThat(tip.shift().z()).isCloseTo(-bending - 0.1 * twist, withinPercentage(1e-8));
        assertThat(tip.shift().y()).isCloseTo(0, within(1e-12));
    }

    /**
     * An equal angle bends about its principal axes: I of 45 degrees, so a load along one leg moves it along the other
     * too. Closed form: (Iy, -Iyz) P L3 / (3 E (Iy Iz - Iyz2)), with signs worked out by hand.
     */
    @Test
    void anAngleBendsAskew() {
        Section angle = OpenSections.angle(0.04, 0.04, 0.004);
        BeamProperty property = new BeamProperty(angle, 205e9, 79e9);
        StructureModel.Builder cantilever = StructureModel.builder();
        int foot = cantilever.node(0, 0, 0);
        int tip = cantilever.node(L, 0, 0);
        int beam = cantilever.add(beam(foot, tip, property));
        cantilever.support(new Support(foot, Support.CLAMP));
        CaseResult result = solved(cantilever.build(), force(tip, 0, 0, -P));
        double iy = angle.bending().y();
        double iz = angle.bending().z();
        double iyz = angle.bending().product();
        double factor = P * L * L * L / (3 * 205e9 * (iy * iz - iyz * iyz));
        assertThat(result.motion(tip).shift().z()).isCloseTo(-factor * iz, withinPercentage(1e-8));
        assertThat(result.motion(tip).shift().y()).isCloseTo(factor * iyz, withinPercentage(1e-8));
        // no net moment about z: stress M (z Iz - y Iyz)/(Iy Iz - Iyz2)
        BeamStress stress = result.beam(beam).stress(0);
        double moment = P * L;
        List<Double> byHand = angle.fibres().stream()
                .map(f -> moment * (f.z() * iz - f.y() * iyz) / (iy * iz - iyz * iyz))
                .sorted()
                .toList();
        assertThat(stress.greatest()).isCloseTo(byHand.getLast(), withinPercentage(1e-8));
        assertThat(stress.least()).isCloseTo(byHand.getFirst(), withinPercentage(1e-8));
    }
}
