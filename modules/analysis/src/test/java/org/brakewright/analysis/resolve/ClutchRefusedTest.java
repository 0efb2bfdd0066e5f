package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.analysis.resolve.Refused.assertOnly;

import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.clutch.Clutches;
import org.brakewright.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Clutches that cannot be are refused by name, all faults at once; what is not said is assumed openly. */
class ClutchRefusedTest {
    @Test
    void thePlainClutchesStand() {
        assertThat(Clutches.FORK.problems()).isEmpty();
        assertThat(Clutches.RING.problems()).isEmpty();
        assertThat(Clutches.SPRUNG.problems()).isEmpty();
        assertThat(Clutches.SPRUNG.ledger())
                .extracting("path")
                .noneMatch(path -> path.toString().startsWith("clutch."));
    }

    @ParameterizedTest
    @CsvSource({
        "clutch.slave.inner_diameter, 60 mm",
        "clutch.bearing.preload, 30 mm",
        "clutch.plate.inner_diameter, 210 mm",
        "clutch.plate.faces, 3",
        "clutch.cover.finger_ratio, 4",
        "clutch.cover.release_load, 1500 N",
        "clutch.cover.most_bearing_travel, 4 mm",
        "clutch.cover.diaphragm.rim_inner_diameter, 230 mm",
        "clutch.cover.diaphragm.fulcrum_diameter, 218 mm",
        "clutch.cover.diaphragm.bearing_diameter, 180 mm",
        "clutch.cover.diaphragm.engaged_deflection, 0.9 mm",
        "clutch.line.tube_wall, 2.5 mm"
    })
    void contradictionsOfASprungRing(String path, String value) {
        assertOnly(Clutches.SPRUNG.with(path + ": " + value), path, value);
    }

    /** Closed form: the force of a cone taller than 2.83 times its thickness falls below nothing beyond flat. */
    @Test
    void aConeThatSnapsThroughCannotClamp() {
        WrittenCar tall = Clutches.SPRUNG.with("clutch.cover.diaphragm.cone_height: 9 mm");
        assertOnly(
                tall.with("clutch.cover.diaphragm.engaged_deflection: 10 mm"),
                "clutch.cover.diaphragm.cone_height",
                "9 mm");
    }

    @Test
    void theMasterHasAStrokeLeft() {
        assertOnly(
                Clutches.RING.with("clutch.master.stroke: 9 mm\nclutch.master.lost_stroke: 10 mm"),
                "clutch.master.lost_stroke",
                "10 mm");
    }

    @Test
    void theRatioIsGivenOnce() {
        assertOnly(Clutches.RING.without("clutch.pedal.ratio"), "clutch.pedal.ratio", "");
        assertOnly(
                Clutches.RING.with("clutch.pedal.linkage.pad_arm: 250 mm\nclutch.pedal.linkage.pushrod_arm: 50 mm"),
                "clutch.pedal.ratio",
                "5.5");
    }

    @Test
    void pointsStandInOrderAndAreACurve() {
        WrittenCar points = Clutches.RING.without("clutch.cover").with("""
                clutch.cover.diaphragm.kind: release_points
                clutch.cover.diaphragm.points[0].travel: 4 mm
                clutch.cover.diaphragm.points[0].force: 800 N
                clutch.cover.diaphragm.points[1].travel: 3 mm
                clutch.cover.diaphragm.points[1].force: 900 N
                """);
        assertOnly(points, "clutch.cover.diaphragm.points[1].travel", "3 mm");
        assertOnly(points.without("clutch.cover.diaphragm.points[1]"), "clutch.cover.diaphragm.points", "1 point");
        assertOnly(
                points.with("clutch.cover.diaphragm.points[0].force: 0 N\nclutch.cover.diaphragm.points[1].force: 0 N\n"
                        + "clutch.cover.diaphragm.points[1].travel: 8 mm"),
                "clutch.cover.diaphragm.points",
                "2 points");
    }

    @Test
    void everyFaultIsToldAtOnce() {
        WrittenCar car = Clutches.SPRUNG.with("""
                clutch.slave.inner_diameter: 60 mm
                clutch.plate.faces: 3
                clutch.plate.inner_diameter: 210 mm
                clutch.cover.diaphragm.rim_inner_diameter: 230 mm
                clutch.cover.diaphragm.bearing_diameter: 180 mm
                clutch.cover.finger_ratio: 3
                clutch.pedal_spring.kind: over_centre
                clutch.pedal_spring.action: pulls
                clutch.pedal_spring.spring_rate: 5 N/mm
                clutch.pedal_spring.free_length: 100 mm
                clutch.pedal_spring.pin_radius: 60 mm
                clutch.pedal_spring.anchor_radius: 60 mm
                clutch.pedal_spring.dead_centre: 40 mm
                clutch.pedal_spring.pad_arm: 250 mm
                """);
        assertThat(car.problems())
                .extracting(Problem::path)
                .containsExactlyInAnyOrder(
                        "clutch.slave.inner_diameter",
                        "clutch.plate.faces",
                        "clutch.plate.inner_diameter",
                        "clutch.cover.diaphragm.rim_inner_diameter",
                        "clutch.cover.diaphragm.bearing_diameter",
                        "clutch.cover.finger_ratio",
                        "clutch.pedal_spring.anchor_radius");
    }

    /** What is not said stands in the ledger: the less is known of the cover, the more of it. */
    @Test
    void whatIsNotSaidIsAssumed() {
        WrittenCar bare = Clutches.RING
                .without("clutch.cover")
                .without("clutch.line")
                .without("clutch.bearing.preload")
                .without("clutch.plate.friction")
                .without("clutch.plate.faces")
                .without("clutch.torque_reserve")
                .without("clutch.most_effort");
        assertThat(bare.problems()).isEmpty();
        assertThat(bare.ledger())
                .extracting("path")
                .contains(
                        "clutch.cover.finger_ratio",
                        "clutch.cover.release_load",
                        "clutch.cover.release_travel",
                        "clutch.cover.most_bearing_travel",
                        "clutch.bearing.preload",
                        "clutch.plate.friction",
                        "clutch.plate.faces",
                        "clutch.line.hose_expansion",
                        "clutch.torque_reserve",
                        "clutch.most_effort")
                .doesNotContain("clutch.plate.cushion_travel", "clutch.cover.clamp_load");
        WrittenCar sprung =
                Clutches.SPRUNG.without("clutch.plate.cushion_travel").without("clutch.cover.most_bearing_travel");
        assertThat(sprung.ledger())
                .extracting("path")
                .containsExactly("clutch.plate.cushion_travel", "clutch.cover.most_bearing_travel");
    }
}
