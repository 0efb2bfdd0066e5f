package org.brakewright.kernel.structure;

import static org.brakewright.kernel.structure.Structures.beam;
import static org.brakewright.kernel.structure.Structures.force;
import static org.brakewright.kernel.structure.Structures.solved;

import java.util.Set;
import org.brakewright.kernel.WorkedExample;
import org.brakewright.kernel.structure.column.ColumnEnds;
import org.brakewright.kernel.structure.column.EccentricColumn;
import org.brakewright.kernel.structure.column.EulerColumn;
import org.brakewright.kernel.structure.section.Fibre;
import org.brakewright.kernel.structure.section.OpenSections;
import org.brakewright.kernel.structure.section.Section;
import org.brakewright.kernel.structure.section.Sections;
import org.junit.jupiter.api.Test;

/** The worked examples of docs/laws, invented numbers; results printed there come from an independent computation. */
class LawPagesTest {
    @Test
    void frame() {
        WorkedExample page = WorkedExample.of("frame");
        double load = page.si("load");
        CaseResult cantilever = twoBeams(page, Set.of(), 2, load);
        page.holds(
                "cantilever, tip under end load", -cantilever.motion(2).shift().z());
        CaseResult propped = twoBeams(page, Set.of(Freedom.SHIFT_Z), 1, load);
        page.holds(
                "propped, reaction of the prop under load in the middle",
                propped.reaction(2).force().z());
        page.holds("propped, moment at the foot", -propped.reaction(0).moment().y());
        CaseResult fixed = twoBeams(page, Support.CLAMP, 1, load);
        page.holds("both ends fixed, middle", -fixed.motion(1).shift().z());
        page.holds(
                "both ends fixed, moment at the ends",
                fixed.reaction(2).moment().y());
    }

    private static CaseResult twoBeams(WorkedExample page, Set<Freedom> held, int loaded, double load) {
        Section tube = Sections.roundTube(page.si("tube diameter"), page.si("tube wall"));
        BeamProperty property = new BeamProperty(tube, page.si("Young's modulus"), 79e9);
        double length = page.si("length");
        StructureModel.Builder model = StructureModel.builder();
        int foot = model.node(0, 0, 0);
        int middle = model.node(length / 2, 0, 0);
        int end = model.node(length, 0, 0);
        model.add(beam(foot, middle, property));
        model.add(beam(middle, end, property));
        model.support(new Support(foot, Support.CLAMP)).support(new Support(end, held));
        return solved(model.build(), force(loaded, 0, 0, -load));
    }

    @Test
    void sections() {
        WorkedExample page = WorkedExample.of("sections");
        Section round = Sections.roundTube(page.si("round tube diameter"), page.si("round tube wall"));
        page.holds("round tube area", round.area());
        page.holds("round tube second moment", round.bending().y());
        Section tube = Sections.rectangularTube(page.si("tube width"), page.si("tube height"), page.si("tube wall"));
        page.holds("rectangular tube second moment, upright", tube.bending().y());
        page.holds("rectangular tube second moment, lying", tube.bending().z());
        page.holds("rectangular tube torsion constant", tube.torsionConstant());
        double leg = page.si("angle leg");
        Section angle = OpenSections.angle(leg, leg, page.si("angle thickness"));
        page.holds("angle area", angle.area());
        page.holds("angle, heel below the centroid", -lowest(angle));
        page.holds("angle second moment about a leg", angle.bending().y());
        page.holds("angle product", angle.bending().product());
        page.holds("angle least second moment", angle.bending().least());
        Section channel = OpenSections.channel(
                page.si("channel flange"), page.si("channel height"), page.si("channel thickness"));
        page.holds("channel area", channel.area());
        page.holds(
                "channel, web behind the centroid",
                -channel.fibres().stream().mapToDouble(Fibre::y).min().orElseThrow());
        page.holds("channel second moment, upright", channel.bending().y());
        page.holds("channel second moment, lying", channel.bending().z());
        page.holds("channel torsion constant", channel.torsionConstant());
    }

    private static double lowest(Section section) {
        return section.fibres().stream().mapToDouble(Fibre::z).min().orElseThrow();
    }

    @Test
    void column() {
        WorkedExample page = WorkedExample.of("column");
        EulerColumn hinged = column(page, ColumnEnds.BOTH_HINGED);
        EulerColumn fixed = column(page, ColumnEnds.BOTH_FIXED);
        page.holds("critical load, hinged", hinged.criticalLoad());
        page.holds("critical load, fixed", fixed.criticalLoad());
        page.holds("failure load, hinged", hinged.failureLoad(page.si("yield stress")));
        page.holds("failure load, fixed", fixed.failureLoad(page.si("yield stress")));
        EccentricColumn offAxis = new EccentricColumn(hinged, page.si("offset"), page.si("tube diameter") / 2);
        page.holds("bow off axis", offAxis.bow(page.si("load")));
        page.holds("stress off axis", offAxis.greatestStress(page.si("load")));
        page.holds("load off axis at yield", offAxis.loadAt(page.si("yield stress")));
    }

    private static EulerColumn column(WorkedExample page, ColumnEnds ends) {
        Section tube = Sections.roundTube(page.si("tube diameter"), page.si("tube wall"));
        double length = ends.factor() * page.si("length");
        return new EulerColumn(tube.bending().least(), tube.area(), length, page.si("Young's modulus"));
    }
}
