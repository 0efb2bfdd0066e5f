package org.brakewright.analysis.mount;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.hydraulics.Cause;
import org.brakewright.model.Problem;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.PedalPoints;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a mount gives way at the pad, against plates and beams of handbooks. */
class MountStiffnessTest {
    /** A foot that pushes the middle of the panel square: the bearing and its rod lie in one line with the pad. */
    private static double middlePush(WrittenCar car) {
        ResolvedMount mount = mount(car);
        if (!(Settling.of(mount.structure()) instanceof Settled.Firm firm)) {
            throw new AssertionError("does not stand");
        }
        PedalPoints points = mount.pedal();
        Place middle = new Place(0, 0, 0);
        PedalPoints square = new PedalPoints(
                new Place(0, 0, 0.1), middle, middle, new Place(0.1, 0, 0), points.profile(), points.material());
        return firm.give(mount.structure(), PedalForces.of(square));
    }

    private static ResolvedMount mount(WrittenCar car) {
        return car.resolved().mount().orElseThrow();
    }

    private static double stiffness(WrittenCar car) {
        return car.resolved().pedal().mountStiffness();
    }

    private static WrittenCar edges(String hold) {
        return Mounts.BOX.with(
                "mount.panel.edges[0]: %1$s\nmount.panel.edges[1]: %1$s\nmount.panel.edges[2]: %1$s\nmount.panel.edges[3]: %1$s"
                        .formatted(hold));
    }

    /**
     * One bolt in the middle under a washer of 1/75 of the side, near enough a point. Timoshenko, Theory of Plates and
     * Shells, articles 34 and 44 (from memory): w = k P a2/D with k 0.0116 hinged and 0.0056 clamped.
     */
    @ParameterizedTest
    @CsvSource({"hinged, 0.01160", "clamped, 0.00560"})
    void aSquarePlateUnderACentralForce(String hold, double factor) {
        WrittenCar car = edges(hold)
                .without("mount.brackets[0].bolts.positions")
                .with("mount.brackets[0].bolts.positions[0].across: 0 mm")
                .with("mount.brackets[0].bolts.positions[0].up: 0 mm")
                .with("mount.brackets[0].bolts.diameter: 6 mm\nmount.brackets[0].bolts.pitch: 1 mm")
                .with("mount.brackets[0].bolts.washer: 8 mm\nmount.brackets[0].bolts.clamped: 3 mm");
        double bending = 210e9 * Math.pow(1.5e-3, 3) / (12 * (1 - 0.3 * 0.3));
        assertThat(middlePush(car)).isCloseTo(factor * 0.6 * 0.6 / bending, within(0.02 * factor * 0.36 / bending));
    }

    /** Bending of the sheet alone gives way here, nothing lies in its plane: eight times at twice the thickness. */
    @Test
    void aFlatClampedSheetBendsByTheCube() {
        double thin = stiffness(Mounts.BOX.with("mount.panel.thickness: 1 mm"));
        double thick = stiffness(Mounts.BOX.with("mount.panel.thickness: 2 mm"));
        assertThat(thick / thin).isCloseTo(8, within(0.08));
    }

    /** Closed form: a cantilever of EI over the pin, with the root turning between pivot and pin. */
    @Test
    void anArmBendsAsBeams() {
        double second = 0.010 * Math.pow(0.030, 3) / 12;
        double pad = 0.300;
        double pin = 0.060;
        double over = pad - pin;
        double give = over * over * pad / (3 * 210e9 * second);
        assertThat(1 / Mounts.BOX.resolved().pedal().armStiffness()).isCloseTo(give, within(1e-6 * give));
    }

    @Test
    void thickerDoubledOrBracedIsNeverSofter() {
        List<WrittenCar> firmer = List.of(
                Mounts.BOX,
                Mounts.BOX.with(Mounts.DOUBLER),
                Mounts.BOX.with(Mounts.DOUBLER).with("mount.doublers[0].joined: all_over"),
                Mounts.BOX
                        .with(Mounts.DOUBLER)
                        .with("mount.doublers[0].joined: all_over")
                        .with(Mounts.BRACE),
                Mounts.BOX
                        .with(Mounts.DOUBLER)
                        .with("mount.doublers[0].joined: all_over\nmount.panel.thickness: 1.6 mm")
                        .with(Mounts.BRACE));
        assertThat(firmer).extracting(MountStiffnessTest::stiffness).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void theTravelBudgetTakesWhatTheMountGives() {
        ResolvedBuild build = Mounts.BOX.with(Mounts.BRACE).resolved();
        var point = java.util.Objects.requireNonNull(Analyse.analyse(build).hardStop());
        double force = point.point().pedalForceN();
        assertThat(point.travelBudget())
                .filteredOn(share -> share.cause() == Cause.MOUNT)
                .singleElement()
                .satisfies(share -> assertThat(share.padTravelM())
                        .isCloseTo(force / build.pedal().mountStiffness(), within(1e-9)));
    }

    @Test
    void aStiffnessIsToldOnce() {
        assertThat(Mounts.BOX
                        .with("pedal.mount_stiffness: 200 N/mm\npedal.arm_stiffness: 800 N/mm")
                        .problems())
                .extracting(Problem::path)
                .containsExactly("pedal.mount_stiffness", "pedal.arm_stiffness");
    }

    @Test
    void aComputedStiffnessIsNoAssumption() {
        assertThat(Mounts.BOX.ledger())
                .extracting("path")
                .doesNotContain("pedal.mount_stiffness", "pedal.arm_stiffness");
    }

    @Test
    void aBracketTiedToNothingIsNamed() {
        assertThat(Mounts.BOX.without("mount.brackets[0].bolts").problems())
                .extracting(Problem::path)
                .containsExactly("mount.brackets[0]");
    }

    @Test
    void aPanelThatNothingHoldsIsNamed() {
        assertThat(edges("free").problems()).extracting(Problem::path).containsExactly("mount.panel");
    }
}
