package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.kernel.Printed.assertPrinted;
import static org.brakewright.kernel.structure.Structures.OUT_OF_PLANE;
import static org.brakewright.kernel.structure.Structures.UP;
import static org.brakewright.kernel.structure.Structures.bar;
import static org.brakewright.kernel.structure.Structures.beam;
import static org.brakewright.kernel.structure.Structures.force;
import static org.brakewright.kernel.structure.Structures.section;
import static org.brakewright.kernel.structure.Structures.solved;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** Frames, trusses and springs against textbooks, in the units of the source (a consistent set each time). */
class FrameTest {
    /** D. L. Logan, A First Course in the Finite Element Method, 4th ed., example 5.8; kip and inch. */
    @Test
    void spaceFrameOfThreeMembers() {
        BeamProperty property = new BeamProperty(section(10, 100, 50), 30_000, 10_000);
        StructureModel.Builder frame = StructureModel.builder();
        int joint = frame.node(0, 0, 0);
        int[] feet = {frame.node(-100, 0, 0), frame.node(0, 0, -100), frame.node(0, -100, 0)};
        for (int foot : feet) {
            frame.support(new Support(foot, Support.CLAMP));
            frame.add(new Beam("member", BeamEnd.fixed(foot), BeamEnd.fixed(joint), new Vector3(1, 1, 1), property));
        }
        Wrench load = new Wrench(new Vector3(0, -50, 0), new Vector3(-1000, 0, 0));
        Motion motion = solved(frame.build(), new Load.OnNode(joint, load)).motion(joint);
        assertPrinted(motion.shift().x() * 1e5, "7.098");
        assertPrinted(motion.shift().y(), "-0.014");
        assertPrinted(motion.shift().z() * 1e3, "-2.352");
        assertPrinted(motion.turn().x() * 1e3, "-3.996");
        assertPrinted(motion.turn().y() * 1e5, "1.78");
        // the source prints -1.033; the last digit is cut off there, not rounded (unrounded -1.03343)
        assertThat(motion.turn().z() * 1e4).isCloseTo(-1.03343, within(5e-6));
    }

    /** D. L. Logan, same, example 5.1 (inputs and joint displacements from memory); pound and inch. */
    @Test
    void portalWithSideLoad() {
        BeamProperty post = new BeamProperty(section(10, 200, 1), 30e6, 12e6);
        StructureModel.Builder portal = StructureModel.builder();
        int[] at = {portal.node(0, 0, 0), portal.node(0, 120, 0), portal.node(120, 120, 0), portal.node(120, 0, 0)};
        int first = portal.add(beam(at[0], at[1], post));
        portal.add(beam(at[1], at[2], new BeamProperty(section(10, 100, 1), 30e6, 12e6)));
        int last = portal.add(beam(at[2], at[3], post));
        portal.support(new Support(at[0], Support.CLAMP)).support(new Support(at[3], Support.CLAMP));
        portal.support(new Support(at[1], OUT_OF_PLANE)).support(new Support(at[2], OUT_OF_PLANE));
        Load moment = new Load.OnNode(at[2], new Wrench(Vector3.ZERO, new Vector3(0, 0, 5000)));
        CaseResult result = solved(portal.build(), force(at[1], 10_000, 0, 0), moment);
        assertPrinted(result.motion(at[1]).shift().x(), "0.211");
        assertPrinted(result.motion(at[1]).shift().y(), "0.00148");
        assertPrinted(result.motion(at[1]).turn().z(), "-0.00153");
        assertPrinted(result.motion(at[2]).shift().x(), "0.209");
        BeamResult left = result.beam(first);
        // printed to three figures
        assertThat(left.tension()).isCloseTo(3700, within(5.0));
        assertThat(left.start().force().y()).isCloseTo(4990, within(5.0));
        assertThat(left.start().moment().z()).isCloseTo(376_000, within(500.0));
        assertThat(left.end().moment().z()).isCloseTo(223_000, within(500.0));
        BeamResult right = result.beam(last);
        assertThat(right.start().moment().z()).isCloseTo(226_000, within(500.0));
        assertThat(right.end().moment().z()).isCloseTo(375_000, within(500.0));
    }

    /** A. Bedford, W. Fowler, Engineering Mechanics: Statics, 4th ed., problem 6.64; kN and m. */
    @Test
    void spaceTrussByStatics() {
        StructureModel.Builder truss = StructureModel.builder();
        int a = truss.node(1.1, -0.4, 0);
        int b = truss.node(1, 0, 0);
        int[] held = {truss.node(0, 0, 0.6), truss.node(0, 0, -0.4), truss.node(0, 0.8, 0)};
        // statically determinate: any stiffness gives the same forces
        BeamProperty any = new BeamProperty(section(1, 1, 1), 1e3, 1e3);
        Vector3 up = new Vector3(0.3, 0.5, 0.8);
        int[][] bars = {{a, b}, {a, held[0]}, {a, held[1]}, {b, held[0]}, {b, held[1]}, {b, held[2]}};
        for (int[] ends : bars) {
            truss.add(bar(ends[0], ends[1], up, any));
        }
        for (int node : held) {
            truss.support(new Support(node, Support.PIN));
        }
        CaseResult result = solved(truss.build(), force(a, 10, 60, 20));
        assertThat(result.beam(0).tension()).isCloseTo(-72.1543, within(5e-5));
        assertThat(result.beam(1).tension()).isCloseTo(-13.1529, within(5e-5));
        assertThat(result.beam(2).tension()).isCloseTo(43.2926, within(5e-5));
        assertPrinted(result.beam(3).tension(), "32.7");
        assertPrinted(result.beam(4).tension(), "45.2");
        assertPrinted(result.beam(5).tension(), "-112.1");
    }

    /** AFNOR/SFM guide VPCS, case SSLL 11/89 (reference figures from memory); SI. */
    @Test
    void planeTrussOfTheFrenchGuide() {
        StructureModel.Builder truss = StructureModel.builder();
        int a = truss.node(0, 0, 0);
        int b = truss.node(1, 0, 0);
        int c = truss.node(0.5, 0.5, 0);
        int d = truss.node(2, 1, 0);
        BeamProperty thick = new BeamProperty(section(2e-4, 1e-9, 1e-9), 1.962e11, 7e10);
        BeamProperty thin = new BeamProperty(section(1e-4, 1e-9, 1e-9), 1.962e11, 7e10);
        truss.add(bar(a, c, UP, thick));
        truss.add(bar(b, c, UP, thick));
        truss.add(bar(c, d, UP, thin));
        truss.add(bar(b, d, UP, thin));
        truss.support(new Support(a, Support.PIN)).support(new Support(b, Support.PIN));
        truss.support(new Support(c, OUT_OF_PLANE)).support(new Support(d, OUT_OF_PLANE));
        CaseResult result = solved(truss.build(), force(d, 0, -9810, 0));
        assertPrinted(result.motion(c).shift().x() * 1e3, "0.26517");
        assertPrinted(result.motion(c).shift().y() * 1e3, "0.08839");
        // the guide's figure from memory, 3.47902, lies 1e-5 mm from ours, 3.47903
        assertThat(result.motion(d).shift().x() * 1e3).isCloseTo(3.47902, within(1.5e-5));
        assertPrinted(result.motion(d).shift().y() * 1e3, "-5.60035");
    }

    /** A. Kassimali, Structural Analysis, 3rd ed., example 13.14, unrounded (the book's figures carry rounding); kip, inch. */
    @Test
    void continuousBeamWithSettlements() {
        BeamProperty property = new BeamProperty(section(1, 7800, 1), 29_000, 11_000);
        StructureModel.Builder beam = StructureModel.builder();
        int[] at = new int[4];
        double[] settlement = {0, 0.625, 1.5, 0.75};
        Load[] loads = new Load[7];
        for (int i = 0; i < 4; i++) {
            at[i] = beam.node(240.0 * i, 0, 0);
            beam.support(new Support(at[i], Set.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.SHIFT_Z, Freedom.TURN_X)));
            loads[i] = new Load.Settlement(at[i], Freedom.SHIFT_Y, -settlement[i]);
        }
        for (int i = 0; i < 3; i++) {
            int span = beam.add(beam(at[i], at[i + 1], property));
            loads[4 + i] = new Load.OnBeam(span, new Vector3(0, -2.0 / 12, 0));
        }
        CaseResult result = solved(beam.build(), loads);
        double[] unrounded = {-1.18099, 122.542, -61.5404, 60.1797};
        for (int i = 0; i < 4; i++) {
            // six figures of check-values.md F9
            assertThat(result.reaction(at[i]).force().y()).isCloseTo(unrounded[i], withinPercentage(5e-4));
        }
    }

    /** D. L. Logan, same, example 2.1: exactly 10/11 and 15/11 in; pound and inch. */
    @Test
    void threeSpringsInARow() {
        StructureModel.Builder row = StructureModel.builder();
        int[] at = {row.node(0, 0, 0), row.node(1, 0, 0), row.node(2, 0, 0), row.node(3, 0, 0)};
        for (int i = 0; i < 3; i++) {
            row.add(new Spring("spring", at[i], at[i + 1], Axes.OF_STRUCTURE, SpringRate.axial(1000.0 * (i + 1))));
        }
        row.support(new Support(at[0], Support.CLAMP)).support(new Support(at[3], Support.CLAMP));
        row.support(new Support(at[1], Set.of(Freedom.SHIFT_Y, Freedom.SHIFT_Z)));
        row.support(new Support(at[2], Set.of(Freedom.SHIFT_Y, Freedom.SHIFT_Z)));
        CaseResult result = solved(row.build(), force(at[2], 5000, 0, 0));
        assertThat(result.motion(at[1]).shift().x()).isCloseTo(10.0 / 11, within(1e-14));
        assertThat(result.motion(at[2]).shift().x()).isCloseTo(15.0 / 11, within(1e-14));
        assertThat(result.reaction(at[0]).force().x()).isCloseTo(-10_000.0 / 11, within(1e-9));
        assertThat(result.reaction(at[3]).force().x()).isCloseTo(-45_000.0 / 11, within(1e-9));
        // the third spring is pressed together: it pushes its second node along +x
        assertThat(result.spring(2).force().x()).isCloseTo(45_000.0 / 11, within(1e-9));
    }
}
