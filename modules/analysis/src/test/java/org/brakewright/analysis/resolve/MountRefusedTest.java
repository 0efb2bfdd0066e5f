package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.analysis.resolve.Refused.assertOnly;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.mount.Mounts;
import org.brakewright.model.Problem;
import org.junit.jupiter.api.Test;

/** Mounts that cannot be are refused by name, all faults at once; what is not said is assumed openly. */
class MountRefusedTest {
    private static final String HOLE = """
            mount.panel.holes[0].across: 200 mm
            mount.panel.holes[0].up: 200 mm
            mount.panel.holes[0].diameter: 60 mm
            """;

    @Test
    void aPlainMountStands() {
        assertThat(Mounts.BOX.with(Mounts.DOUBLER).with(Mounts.BRACE).with(HOLE).problems())
                .isEmpty();
    }

    @Test
    void whatIsNotToldStandsInTheLedger() {
        assertThat(Mounts.BOX.ledger())
                .extracting(Assumption::path)
                .filteredOn(path -> path.startsWith("mount."))
                .containsExactly(
                        "mount.brackets[0].bolts.hole",
                        "mount.brackets[0].bolts.engagement",
                        "mount.loads.function",
                        "mount.loads.stiffness",
                        "mount.loads.strength",
                        "mount.loads.sideways",
                        "mount.loads.stops",
                        "mount.loads.stop_force",
                        "mount.loads.survival");
    }

    @Test
    void holesThatOverlap() {
        assertThat(Mounts.BOX
                        .with(HOLE)
                        .with(HOLE.replace("[0]", "[1]").replace("200 mm", "170 mm"))
                        .problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.path()).isEqualTo("mount.panel.holes[1]");
                    assertThat(problem.message()).contains("mount.panel.holes[0]");
                });
    }

    @Test
    void anOutlineThatCrossesItself() {
        assertThat(Mounts.BOX
                        .with("mount.panel.outline[2].across: -300 mm\nmount.panel.outline[3].across: 300 mm")
                        .problems())
                .extracting(Problem::path)
                .containsExactly("mount.panel.outline");
    }

    @Test
    void anOutlineThatStaysOpen() {
        assertThat(Mounts.BOX
                        .without("mount.panel.outline[3]")
                        .without("mount.panel.outline[2]")
                        .problems())
                .extracting(Problem::path)
                .containsExactlyInAnyOrder("mount.panel.edges", "mount.panel.outline");
    }

    @Test
    void aBoltOutsideThePanel() {
        assertThat(Mounts.BOX
                        .with("mount.brackets[0].bolts.positions[2].up: 400 mm")
                        .problems())
                .extracting(Problem::path)
                .containsOnly("mount.brackets[0].bolts.positions[2]");
    }

    @Test
    void aBoltInAHole() {
        assertThat(Mounts.BOX.with(HOLE.replace("200 mm", "40 mm")).problems())
                .extracting(Problem::path)
                .containsExactly("mount.brackets[0].bolts.positions[2]");
    }

    /** Bolts 3 and 4 of the square of 80 mm, 8 mm apart under washers of 16 mm. */
    @Test
    void boltsWhoseWashersOverlap() {
        assertThat(Mounts.BOX
                        .with("mount.brackets[0].bolts.positions[3].across: 32 mm")
                        .problems())
                .extracting(Problem::path)
                .contains("mount.brackets[0].bolts.positions[3]");
    }

    @Test
    void aMaterialThatNobodyKnows() {
        assertOnly(Mounts.BOX.with("mount.panel.material: tin foil"), "mount.panel.material", "tin foil");
    }

    @Test
    void thePivotIsCarriedOnce() {
        assertOnly(Mounts.BOX.with("mount.brackets[0].carries[0]: masters"), "mount.brackets", "");
    }

    @Test
    void aSprungSideNeedsItsStiffness() {
        assertOnly(Mounts.BOX.with("mount.panel.edges[1]: sprung"), "mount.panel.edge_stiffness", "");
    }

    @Test
    void aTubeWithoutHollow() {
        assertOnly(
                Mounts.BOX.with(Mounts.BRACE).with("mount.stringers[0].profile.wall: 11 mm"),
                "mount.stringers[0].profile.wall",
                "11 mm");
    }

    @Test
    void aStringerWithoutNearEnd() {
        assertOnly(Mounts.BOX.with(Mounts.BRACE).without("mount.stringers[0].on_panel"), "mount.stringers[0]", "brace");
    }

    @Test
    void aBracketThatIsNotThere() {
        assertOnly(
                Mounts.BOX
                        .with(Mounts.BRACE)
                        .without("mount.stringers[0].on_panel")
                        .without("mount.stringers[0].foot")
                        .with("mount.stringers[0].on_bracket: crate")
                        .with("mount.stringers[0].at.forward: -60 mm\nmount.stringers[0].at.left: 0 mm")
                        .with("mount.stringers[0].at.up: 60 mm"),
                "mount.stringers[0].on_bracket",
                "crate");
    }

    @Test
    void thePedalsPointsAreToldOnce() {
        assertOnly(
                Mounts.BOX.with("mount.arm.pad.forward: 0 mm\nmount.arm.pad.left: 0 mm\nmount.arm.pad.up: 0 mm"),
                "mount.arm",
                "");
        assertOnly(
                Mounts.BOX.without("pedal.mechanism").with("pedal.ratio: 5").without("mount.arm.pad_offset"),
                "mount.arm",
                "");
        assertOnly(Mounts.BOX.with("mount.arm.lean: 5 deg"), "mount.arm.lean", "5 deg");
    }

    @Test
    void sheetsOfDifferentMaterialsAreNotOne() {
        assertOnly(
                Mounts.BOX
                        .with(Mounts.DOUBLER)
                        .with("mount.doublers[0].joined: all_over\nmount.doublers[0].material: s355"),
                "mount.doublers[0].joined",
                "all_over");
    }

    @Test
    void allFaultsAtOnce() {
        assertThat(Mounts.BOX
                        .with("mount.panel.material: tin foil\nmount.panel.edges[1]: sprung")
                        .with("mount.brackets[0].bolts.washer: 7 mm\nmount.brackets[0].bolts.positions[2].up: 400 mm")
                        .problems())
                .extracting(Problem::path)
                .contains(
                        "mount.panel.material",
                        "mount.panel.edge_stiffness",
                        "mount.brackets[0].bolts.washer",
                        "mount.brackets[0].bolts.positions[2]");
    }

    @Test
    void withoutAMountNothingIsAsked() {
        assertThat(Cars.TWIN.resolved().mount()).isEmpty();
    }
}
