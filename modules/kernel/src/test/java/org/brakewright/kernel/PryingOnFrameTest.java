package org.brakewright.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Set;
import org.brakewright.kernel.fastener.Prying;
import org.brakewright.kernel.structure.Beam;
import org.brakewright.kernel.structure.BeamEnd;
import org.brakewright.kernel.structure.BeamProperty;
import org.brakewright.kernel.structure.CaseResult;
import org.brakewright.kernel.structure.Freedom;
import org.brakewright.kernel.structure.Load;
import org.brakewright.kernel.structure.LoadCase;
import org.brakewright.kernel.structure.Solve;
import org.brakewright.kernel.structure.StructureModel;
import org.brakewright.kernel.structure.StructureOutcome;
import org.brakewright.kernel.structure.Support;
import org.brakewright.kernel.structure.Vector3;
import org.brakewright.kernel.structure.Wrench;
import org.brakewright.kernel.structure.section.Sections;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The closed form of prying against the frame solver: two derivations of one flange. */
class PryingOnFrameTest {
    @ParameterizedTest
    @CsvSource({"0.03, 0.03", "0.045, 0.02", "0.02, 0.05"})
    void aFlangeOfTwoBeams(double rootToBolt, double boltToEdge) {
        StructureModel.Builder flange = StructureModel.builder();
        int root = flange.node(0, 0, 0);
        int bolt = flange.node(rootToBolt, 0, 0);
        int edge = flange.node(rootToBolt + boltToEdge, 0, 0);
        BeamProperty steel = new BeamProperty(Sections.flat(0.03, 0.006), 205e9, 79e9);
        Vector3 up = new Vector3(0, 0, 1);
        flange.add(new Beam("flange", BeamEnd.fixed(root), BeamEnd.fixed(bolt), up, steel));
        flange.add(new Beam("flange", BeamEnd.fixed(bolt), BeamEnd.fixed(edge), up, steel));
        flange.support(new Support(
                root, Set.of(Freedom.SHIFT_X, Freedom.SHIFT_Y, Freedom.TURN_X, Freedom.TURN_Y, Freedom.TURN_Z)));
        flange.support(new Support(bolt, Set.of(Freedom.SHIFT_Z)));
        flange.support(new Support(edge, Set.of(Freedom.SHIFT_Z)));
        Load pull = new Load.OnNode(root, Wrench.ofForce(new Vector3(0, 0, 1000)));
        StructureOutcome outcome = Solve.solve(flange.build(), List.of(LoadCase.of("pull", pull)));
        assertThat(outcome).isInstanceOf(StructureOutcome.Solved.class);
        CaseResult result = ((StructureOutcome.Solved) outcome).cases().getFirst();
        Prying prying = new Prying(rootToBolt, boltToEdge);
        assertThat(-result.reaction(bolt).force().z()).isCloseTo(prying.boltTension(1000), withinPercentage(1e-6));
        double moment = Math.max(
                Math.abs(result.beam(0).at(0).moment().y()),
                Math.abs(result.beam(0).at(1).moment().y()));
        assertThat(moment).isCloseTo(prying.flangeMoment(1000), withinPercentage(1e-6));
    }
}
