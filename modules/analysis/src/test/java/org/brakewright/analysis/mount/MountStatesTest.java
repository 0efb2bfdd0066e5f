package org.brakewright.analysis.mount;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.mount.MountState.Asked;
import org.brakewright.analysis.mount.MountState.BoltState;
import org.brakewright.analysis.mount.MountState.ColumnState;
import org.brakewright.analysis.mount.MountState.Dress;
import org.brakewright.analysis.mount.MountState.EnduranceState;
import org.brakewright.analysis.mount.MountState.JudgedAs;
import org.brakewright.analysis.mount.MountState.LoadState;
import org.brakewright.analysis.mount.MountState.OptionState;
import org.brakewright.analysis.mount.MountState.PartState;
import org.brakewright.analysis.mount.MountState.ReactionState;
import org.brakewright.analysis.mount.MountState.Tried;
import org.brakewright.analysis.mount.MountState.VariantState;
import org.brakewright.analysis.mount.MountState.WeldState;
import org.brakewright.model.resolved.ResolvedBuild;
import org.junit.jupiter.api.Test;

/** What the foot does to a mount, held against statics, closed forms and handbooks. */
class MountStatesTest {
    private static final WrittenCar STRAIGHT = Mounts.BOX.with("mount.loads.sideways: 0 %");

    private static final String WELDS = """
            mount.brackets[0].welds[0].from.across: -50 mm
            mount.brackets[0].welds[0].from.up: -60 mm
            mount.brackets[0].welds[0].to.across: -50 mm
            mount.brackets[0].welds[0].to.up: 60 mm
            mount.brackets[0].welds[0].leg: 3 mm
            mount.brackets[0].welds[1].from.across: 50 mm
            mount.brackets[0].welds[1].from.up: -60 mm
            mount.brackets[0].welds[1].to.across: 50 mm
            mount.brackets[0].welds[1].to.up: 60 mm
            mount.brackets[0].welds[1].leg: 3 mm
            """;

    /** Statics: the body takes what the foot gives, square to the arm, and no more. */
    @Test
    void theBodyTakesTheFootsForce() {
        MountState state = state(Mounts.BOX.with(Mounts.DOUBLER).with(Mounts.BRACE));
        PedalForces forces =
                PedalForces.of(resolved(Mounts.BOX).mount().orElseThrow().pedal());
        double strength = load(state, Asked.STRENGTH).footN();
        assertThat(sum(state, ReactionState::forwardN))
                .isCloseTo(strength * forces.foot().x(), within(1e-5 * strength));
        assertThat(sum(state, ReactionState::leftN)).isCloseTo(0, within(1e-5 * strength));
        assertThat(sum(state, ReactionState::upN))
                .isCloseTo(strength * forces.foot().z(), within(1e-5 * strength));
    }

    /** Two ways to the same movement: by the compliance of the brackets and the arm alone, and by the whole structure. */
    @Test
    void mountAndArmTogetherGiveWhatTheWholeGives() {
        ResolvedBuild build = resolved(STRAIGHT);
        LoadState use = load(state(STRAIGHT), Asked.FUNCTION);
        double apart = use.footN()
                * (1 / build.pedal().mountStiffness() + 1 / build.pedal().armStiffness());
        assertThat(use.padM()).isCloseTo(apart, within(0.01 * apart));
        assertThat(use.armM()).isCloseTo(use.footN() / build.pedal().armStiffness(), within(0.01 * apart));
    }

    /** Beam theory: the foot's moment at the pin, 240 mm from the pad, over the section modulus b h2/6; shear on top. */
    @Test
    void theArmIsBentAtItsPin() {
        PartState arm = part(state(STRAIGHT), "mount.arm");
        double bending = 1250 * 0.240 / (0.010 * 0.030 * 0.030 / 6);
        double shear = 1250 / (0.010 * 0.030);
        assertThat(arm.stiffnessPa()).isCloseTo(Math.hypot(bending, Math.sqrt(3) * shear), within(0.01 * bending));
        assertThat(arm.strengthPa() / arm.stiffnessPa()).isCloseTo(2250.0 / 1250, within(1e-9));
        assertThat(arm.yieldsAtN()).isCloseTo(arm.yieldPa() / arm.stiffnessPa() * 1250, within(1e-6));
    }

    @Test
    void someBoltsArePulledAndAllAreTightenedAsUsual() {
        MountState state = state(STRAIGHT);
        assertThat(state.bolts()).hasSize(4).allSatisfy(bolt -> {
            assertThat(bolt.prying()).isNull();
            assertThat(bolt.preloadTold()).isFalse();
            // ISO 898-1: 580 MPa proof, 36.6 mm2; three quarters of it.
            assertThat(bolt.preloadN()).isCloseTo(0.75 * 580 * 36.6, within(10.0));
        });
        assertThat(state.bolts()).extracting(BoltState::pullN).anyMatch(pull -> pull > 0);
    }

    /** 20 N m over 0.2 and 8 mm. */
    @Test
    void aToldTorqueMakesThePreload() {
        assertThat(state(STRAIGHT.with("mount.brackets[0].bolts.torque: 20 N m"))
                        .bolts())
                .allSatisfy(bolt -> {
                    assertThat(bolt.preloadTold()).isTrue();
                    assertThat(bolt.preloadN()).isCloseTo(12_500, within(1.0));
                });
    }

    /** The closed form of kernel.fastener.Prying for equal lengths: 3/8. */
    @Test
    void aFootThatIsToldPriesItsBolts() {
        MountState state = state(STRAIGHT.with(
                "mount.brackets[0].bolts.root_to_bolt: 15 mm\nmount.brackets[0].bolts.bolt_to_edge: 15 mm"));
        assertThat(state.bolts()).allSatisfy(bolt -> {
            assertThat(bolt.prying()).isCloseTo(0.375, within(1e-12));
            assertThat(bolt.tensionN()).isCloseTo(1.375 * bolt.pullN(), within(1e-9));
        });
    }

    /** ISO 898-2, regular nuts of class 8: 6.44 to 6.8 mm high hold an M8 bolt until it breaks (from memory). */
    @Test
    void anM8NutOfUsualHeightHoldsTheBolt() {
        assertThat(state(STRAIGHT).bolts()).extracting(BoltState::neededM).allMatch(needed -> needed < 6.8e-3);
    }

    /** Shigley, table 9-4: 0.30 of 270 MPa is more than 0.40 of 140 MPa, so the sheet governs. */
    @Test
    void weldsAreHeldAgainstTheSheet() {
        MountState state = state(STRAIGHT.without("mount.brackets[0].bolts").with(WELDS));
        assertThat(state.welds()).hasSize(2).allSatisfy(weld -> {
            assertThat(weld.allowedPa()).isCloseTo(0.40 * 140e6, within(1.0));
            assertThat(weld.throatM()).isCloseTo(0.707 * 3e-3, within(1e-9));
            assertThat(weld.holdsToN() * weld.stiffnessPa()).isCloseTo(1250 * weld.allowedPa(), within(1.0));
        });
        // Two welds of 120 mm share at least the foot's force; the mean cannot exceed the greatest.
        double mean = 1250 / (2 * 0.120 * 0.707 * 3e-3);
        assertThat(state.welds()).extracting(WeldState::stiffnessPa).anyMatch(stress -> stress > mean);
        assertThat(state.endurance()).extracting(EnduranceState::as).contains(JudgedAs.WELD_THROAT);
    }

    /** Euler: pi2 E I/L2 for a slender rod hinged at both ends. */
    @Test
    void aPressedBraceBowsAsEulerSays() {
        WrittenCar slender = Mounts.BOX
                .with(Mounts.BRACE)
                .with("mount.stringers[0].body.forward: 600 mm\nmount.stringers[0].body.up: 90 mm")
                .with("mount.stringers[0].profile.diameter: 10 mm\nmount.stringers[0].profile.wall: 1 mm");
        MountState state = state(slender);
        ColumnState column = state.columns().getFirst();
        double second = Math.PI * (Math.pow(0.010, 4) - Math.pow(0.008, 4)) / 64;
        assertThat(column.effectiveM()).isCloseTo(0.600, within(1e-9));
        assertThat(column.failsN())
                .isCloseTo(Math.PI * Math.PI * 205e9 * second / 0.36, within(0.03 * column.failsN()));
        assertThat(column.failsAtN() * column.pressN()).isCloseTo(2250 * column.failsN(), within(1.0));
    }

    /** EN 1993-1-9: 125 MPa two million times, by the cube; the arm's cut edges. */
    @Test
    void theArmEnduresByItsClass() {
        MountState state = state(STRAIGHT.with("mount.loads.stop_force: 600 N\nmount.loads.survival: 97.7 %"));
        EnduranceState arm = state.endurance().stream()
                .filter(each -> each.path().equals("mount.arm"))
                .findFirst()
                .orElseThrow();
        double cycles = 2e6 * Math.pow(125e6 / arm.rangePa(), 3);
        assertThat(arm.rangePa()).isCloseTo(part(state, "mount.arm").stiffnessPa() * 600 / 1250, within(1.0));
        assertThat(arm.stops()).isCloseTo(cycles, within(0.01 * cycles));
    }

    @Test
    void moreOnThePanelIsStiffer() {
        MountState state = state(Mounts.BOX.with(Mounts.DOUBLER).with(Mounts.BRACE));
        assertThat(state.variants())
                .extracting(VariantState::dress)
                .containsExactly(Dress.BARE, Dress.DOUBLED, Dress.BRACED);
        assertThat(state.variants()).extracting(VariantState::stiffness).isSorted();
        // Steel of 7850 kg/m3: 0.3 m square of 1.5 mm.
        assertThat(state.variants().get(1).massKg()).isCloseTo(0.3 * 0.3 * 1.5e-3 * 7850, within(0.01));
        assertThat(state.variants().getLast().padM())
                .isCloseTo(
                        load(state, Asked.FUNCTION).padM(),
                        within(0.02 * load(state, Asked.FUNCTION).padM()));
    }

    /** The shortcut for a hinged tube agrees with the same tube meshed into the structure. */
    @Test
    void aTriedTubeGainsWhatTheSameTubeDoesWhenTold() {
        String tube = """
                mount.stringers[0].name: tried
                mount.stringers[0].profile.kind: round_tube
                mount.stringers[0].profile.diameter: 22 mm
                mount.stringers[0].profile.wall: 1.5 mm
                mount.stringers[0].material: cds_tube
                mount.stringers[0].on_bracket: box
                mount.stringers[0].at.forward: -60 mm
                mount.stringers[0].at.left: 0 mm
                mount.stringers[0].at.up: 60 mm
                mount.stringers[0].body.forward: -360 mm
                mount.stringers[0].body.left: 0 mm
                mount.stringers[0].body.up: 60 mm
                mount.stringers[0].near_end: hinged
                mount.stringers[0].body_end: hinged
                """;
        OptionState tried = state(Mounts.BOX).options().stream()
                .filter(option -> option.tried() == Tried.BACK)
                .findFirst()
                .orElseThrow();
        double told = state(Mounts.BOX.with(tube)).variants().getLast().padM();
        assertThat(tried.padM()).isCloseTo(told, within(0.02 * told));
        assertThat(tried.massKg()).isCloseTo(7850 * Math.PI / 4 * (0.022 * 0.022 - 0.019 * 0.019) * 0.3, within(1e-6));
    }

    /** The bracket hangs on a cross tube alone, so the panel bears nothing: statics. */
    @Test
    void aPanelThatBearsNothingHasNoStressToTell() {
        WrittenCar hung = Mounts.BOX.without("mount.brackets[0].bolts").with("""
                mount.cross_tube.profile.kind: round_tube
                mount.cross_tube.profile.diameter: 38 mm
                mount.cross_tube.profile.wall: 2 mm
                mount.cross_tube.material: cds_tube
                mount.cross_tube.right.forward: -60 mm
                mount.cross_tube.right.left: -500 mm
                mount.cross_tube.right.up: 60 mm
                mount.cross_tube.left.forward: -60 mm
                mount.cross_tube.left.left: 500 mm
                mount.cross_tube.left.up: 60 mm
                mount.cross_tube.ends: welded
                mount.cross_tube.carries: box
                """);
        assertThat(state(hung).parts()).extracting(PartState::path).containsExactly("mount.cross_tube", "mount.arm");
        assertThat(state(hung).parts()).extracting(PartState::yieldsAtN).allMatch(Double::isFinite);
    }

    @Test
    void optionsStandMostForTheirMassFirst() {
        assertThat(state(Mounts.BOX.with(Mounts.DOUBLER).with(Mounts.BRACE)).options())
                .isSortedAccordingTo((a, b) -> Double.compare(b.gainedPerKg(), a.gainedPerKg()))
                .extracting(OptionState::tried)
                .contains(Tried.TOLD, Tried.SKIN, Tried.UP, Tried.UP_AND_BACK, Tried.BACK, Tried.ASIDE);
    }

    private static double sum(MountState state, java.util.function.ToDoubleFunction<ReactionState> part) {
        return state.reactions().stream().mapToDouble(part).sum();
    }

    private static LoadState load(MountState state, Asked asked) {
        return state.loads().stream()
                .filter(each -> each.asked() == asked)
                .findFirst()
                .orElseThrow();
    }

    private static PartState part(MountState state, String path) {
        return state.parts().stream()
                .filter(each -> each.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static ResolvedBuild resolved(WrittenCar car) {
        return car.resolved();
    }

    private static MountState state(WrittenCar car) {
        return requireNonNull(MountStates.of(car.resolved()));
    }
}
