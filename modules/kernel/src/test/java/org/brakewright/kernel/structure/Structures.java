package org.brakewright.kernel.structure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.brakewright.kernel.structure.section.Fibre;
import org.brakewright.kernel.structure.section.SecondMoments;
import org.brakewright.kernel.structure.section.Section;

/** Short ways to write test structures. */
final class Structures {
    static final Vector3 UP = new Vector3(0, 0, 1);

    /** What a plane structure in x-y must not do. */
    static final Set<Freedom> OUT_OF_PLANE = EnumSet.of(Freedom.SHIFT_Z, Freedom.TURN_X, Freedom.TURN_Y);

    private Structures() {}

    /** A section of which only stiffness matters. */
    static Section section(double area, double second, double torsion) {
        return new Section(area, new SecondMoments(second, second, 0), torsion, 1, List.of(new Fibre(0, 0)));
    }

    static Beam beam(int from, int to, BeamProperty property) {
        return new Beam("beam", BeamEnd.fixed(from), BeamEnd.fixed(to), UP, property);
    }

    static Beam bar(int from, int to, Vector3 up, BeamProperty property) {
        BeamEnd end = BeamEnd.releasing(to, BeamEnd.BALL);
        return new Beam("bar", BeamEnd.releasing(from, BeamEnd.BALL), end, up, property);
    }

    static Load force(int node, double x, double y, double z) {
        return new Load.OnNode(node, Wrench.ofForce(new Vector3(x, y, z)));
    }

    static CaseResult solved(StructureModel model, Load... loads) {
        StructureOutcome outcome = Solve.solve(model, List.of(LoadCase.of("case", loads)));
        assertThat(outcome).isInstanceOf(StructureOutcome.Solved.class);
        CaseResult result = ((StructureOutcome.Solved) outcome).cases().getFirst();
        // rounding of the sums of forces, in no relation to the truth of the model
        assertThat(result.residual()).isLessThan(1e-5);
        return result;
    }

    static StructureOutcome.Loose loose(StructureModel model, Load... loads) {
        StructureOutcome outcome = Solve.solve(model, List.of(LoadCase.of("case", loads)));
        assertThat(outcome).isInstanceOf(StructureOutcome.Loose.class);
        return (StructureOutcome.Loose) outcome;
    }
}
