package org.brakewright.analysis.footwell;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.footwell.FootwellState.GapState;
import org.brakewright.analysis.footwell.FootwellState.HeelToeState;
import org.brakewright.analysis.footwell.FootwellState.Letter;
import org.brakewright.analysis.footwell.FootwellState.PadState;
import org.brakewright.analysis.footwell.FootwellState.SpacingState;
import org.brakewright.analysis.footwell.FootwellState.SweepState;
import org.brakewright.analysis.footwell.FootwellState.Which;
import org.brakewright.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An invented footwell of three hung pedals, every figure by arithmetic or trigonometry. */
class FootwellStatesTest {
    private static final WrittenCar CAR = Cars.TWIN.with("""
            footwell.brake.breadth: 60 mm
            footwell.brake.height: 50 mm
            footwell.brake.pivot.forward: -200 mm
            footwell.brake.pivot.left: 300 mm
            footwell.brake.pivot.up: 550 mm
            footwell.brake.pad.forward: -200 mm
            footwell.brake.pad.left: 300 mm
            footwell.brake.pad.up: 300 mm
            footwell.clutch.breadth: 60 mm
            footwell.clutch.height: 50 mm
            footwell.clutch.pivot.forward: -200 mm
            footwell.clutch.pivot.left: 415 mm
            footwell.clutch.pivot.up: 550 mm
            footwell.clutch.pad.forward: -190 mm
            footwell.clutch.pad.left: 415 mm
            footwell.clutch.pad.up: 300 mm
            footwell.clutch.travel: 130 mm
            footwell.throttle.breadth: 40 mm
            footwell.throttle.height: 80 mm
            footwell.throttle.pivot.forward: -160 mm
            footwell.throttle.pivot.left: 220 mm
            footwell.throttle.pivot.up: 500 mm
            footwell.throttle.pad.forward: -160 mm
            footwell.throttle.pad.left: 220 mm
            footwell.throttle.pad.up: 290 mm
            footwell.throttle.travel: 60 mm
            footwell.left_wall: 500 mm
            footwell.right_wall: 120 mm
            footwell.driver: men_95
            footwell.shoe: street
            """);

    private static String box(String forward) {
        return """
                footwell.obstacles[0].name: box
                footwell.obstacles[0].kind: box
                footwell.obstacles[0].near: fixed
                footwell.obstacles[0].from.forward: %s
                footwell.obstacles[0].from.left: 200 mm
                footwell.obstacles[0].from.up: 100 mm
                footwell.obstacles[0].to.forward: 300 mm
                footwell.obstacles[0].to.left: 350 mm
                footwell.obstacles[0].to.up: 700 mm
                """.formatted(forward);
    }

    /** British adults, 95 of 100 men 110 mm barefoot, 10 mm more in street shoes, 30 in boots (secondary source). */
    @ParameterizedTest
    @CsvSource({"men_95, street, 120", "women_5, bare, 80", "men_50, boots, 125"})
    void aShoeIsAsBroadAsListed(String driver, String shoe, double millimetres) {
        WrittenCar car = CAR.with("footwell.driver: " + driver + "\nfootwell.shoe: " + shoe);
        assertThat(state(car).shoeM()).isCloseTo(millimetres / 1000, within(1e-12));
    }

    @Test
    void gapsAreFromEdgeToEdgeAndStepsAlongTheCar() {
        GapState left = state(CAR).gaps().getFirst();
        assertThat(left.gapM()).isCloseTo(0.415 - 0.300 - 0.060, within(1e-12));
        assertThat(left.stepAtRestM()).isCloseTo(0.010, within(1e-12));
        GapState right = state(CAR).gaps().getLast();
        assertThat(right.gapM()).isCloseTo(0.300 - 0.220 - 0.050, within(1e-12));
        assertThat(right.stepAtRestM()).isCloseTo(-0.040, within(1e-12));
        assertThat(right.overhangM()).isCloseTo((0.120 - 0.040) / 2, within(1e-12));
    }

    /** Trigonometry: the pad of a plumb arm of 250 mm goes forward by r sin(s/r) and up by r (1 - cos(s/r)). */
    @Test
    void theBrakeStepsForwardByItsTravelAtTheHardStop() {
        Analysis analysis = analysis(CAR);
        double travel = requireNonNull(analysis.hardStop()).point().pedalTravelM();
        double forward = 0.250 * Math.sin(travel / 0.250);
        FootwellState state = requireNonNull(analysis.footwell());
        assertThat(state.gaps().getLast().stepWorkingM()).isCloseTo(forward - 0.040, within(1e-9));
        PadState brake = pad(state, Which.BRAKE);
        assertThat(requireNonNull(brake.working()).x()).isCloseTo(-0.200 + forward, within(1e-9));
        assertThat(brake.working().z()).isCloseTo(0.300 + 0.250 * (1 - Math.cos(travel / 0.250)), within(1e-9));
    }

    /** A pedal that stands on the floor goes forward and down. */
    @Test
    void aStandingPedalGoesForwardToo() {
        PadState brake = pad(state(CAR.with("footwell.brake.pivot.up: 100 mm")), Which.BRAKE);
        assertThat(brake.end().x()).isGreaterThan(brake.rest().x());
        assertThat(brake.end().z()).isLessThan(brake.rest().z());
    }

    /** UN R35 by standards.md 7.1: E 50 to 100, F 50, G 50, H 130, J 160 with three pedals and 120 with two. */
    @Test
    void distancesOfThePublishedRule() {
        assertThat(state(CAR).spacing())
                .extracting(SpacingState::letter)
                .containsExactly(Letter.E, Letter.F, Letter.G, Letter.J, Letter.H);
        spacing(Letter.E, 0.030, 0.050);
        spacing(Letter.F, 0.055, 0.050);
        spacing(Letter.G, 0.500 - 0.445, 0.050);
        spacing(Letter.J, 0.500 - 0.330, 0.160);
        spacing(Letter.H, 0.270 - 0.120, 0.130);
        assertThat(state(CAR.without("footwell.clutch")).spacing())
                .filteredOn(each -> each.letter() == Letter.J)
                .extracting(SpacingState::leastM)
                .containsExactly(0.120);
    }

    private static void spacing(Letter letter, double found, double least) {
        assertThat(state(CAR).spacing())
                .filteredOn(each -> each.letter() == letter)
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.foundM()).isCloseTo(found, within(1e-12));
                    assertThat(each.leastM()).isEqualTo(least);
                    assertThat(each.met()).isEqualTo(found >= least);
                });
    }

    /** The pad of 6 mm goes forward to its end; a wall across stands in its way where arithmetic says. */
    @Test
    void theSmallestGapIsWhereThePadGoesFurthest() {
        double end = pad(state(CAR), Which.BRAKE).end().x();
        SweepState sweep = sweep(state(CAR.with(box("0 mm"))));
        assertThat(sweep.obstacle()).isEqualTo("box");
        // The pad is tilted at its end: its lower corner, half its height down the arm, lies further forward.
        double angle = CAR.resolved().pedal().travelToStop() / 0.250;
        double corner = end + 0.025 * Math.sin(angle);
        assertThat(sweep.gapM()).isCloseTo(-corner - 0.003, within(2e-4));
        assertThat(sweep.travelM()).isCloseTo(CAR.resolved().pedal().travelToStop(), within(1e-6));
        assertThat(sweep.shiftM()).isNull();
    }

    /** The box ends at 350 mm to the left; the pad's edge of 3 mm has to clear it by 10 mm, and no less does. */
    @Test
    void aShiftThatMakesRoomIsFoundAndIsTheLeast() {
        WrittenCar hit = CAR.with(box("-150 mm")).with("footwell.obstacles[0].from.left: 320 mm");
        SweepState sweep = sweep(state(hit));
        assertThat(sweep.gapM()).isLessThanOrEqualTo(0);
        double shift = requireNonNull(sweep.shiftM());
        // The brake's left edge lies at 330 mm, the box begins at 320 mm.
        assertThat(shift).isCloseTo(-(0.330 + 0.003 - 0.320 + 0.010), within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        // shoe 120, gap 35: covers both (75); 55 tan 15 = 14.7 mm out, 60/3 - 55 tan 35 = -18.5 in.
        "120, 35, 10, 60, 0, 0",
        "120, 35, 20, 60, 0, 5.263",
        "120, 35, -30, 60, 0, -11.489",
        // shoe 80 and gap 60: 100 needed.
        "80, 60, 0, 60, 20, 0"
    })
    void oneFootOnTwoPads(double shoe, double gap, double step, double travel, double aside, double forward) {
        HeelToeState state = HeelToe.of(shoe / 1000, gap / 1000, step / 1000, travel / 1000);
        assertThat(state.asideM()).isCloseTo(aside / 1000, within(1e-12));
        assertThat(state.forwardM()).isCloseTo(forward / 1000, within(1e-6));
    }

    @Test
    void aPanelThatIsPlacedInTheCarIsInTheWayToo() {
        WrittenCar mounted = org.brakewright.analysis.mount.Mounts.BOX
                .with(
                        "mount.place_in_car.forward: 0 mm\nmount.place_in_car.left: 300 mm\nmount.place_in_car.up: 500 mm")
                .with("""
                        footwell.brake.breadth: 60 mm
                        footwell.brake.height: 50 mm
                        footwell.throttle.breadth: 40 mm
                        footwell.throttle.height: 80 mm
                        footwell.throttle.pivot.forward: -160 mm
                        footwell.throttle.pivot.left: 220 mm
                        footwell.throttle.pivot.up: 500 mm
                        footwell.throttle.pad.forward: -160 mm
                        footwell.throttle.pad.left: 220 mm
                        footwell.throttle.pad.up: 290 mm
                        footwell.throttle.travel: 60 mm
                        footwell.driver: men_95
                        footwell.shoe: street
                        """);
        assertThat(mounted.with("mount.panel.material: tin foil").problems())
                .as("a mount with a fault is told of once")
                .extracting(Problem::path)
                .containsExactly("mount.panel.material");
        assertThat(state(mounted).sweeps()).extracting(SweepState::obstacle).contains("panel");
        assertThat(mounted.with(
                                "footwell.brake.pad.forward: 0 mm\nfootwell.brake.pad.left: 0 mm\nfootwell.brake.pad.up: 0 mm")
                        .problems())
                .extracting(Problem::path)
                .containsExactly("footwell.brake");
    }

    @Test
    void badFootwellsAreRefusedByName() {
        refused("footwell.brake", CAR.without("footwell.brake.pad"));
        refused("footwell.brake.travel", CAR.with("footwell.brake.travel: 120 mm"));
        refused("footwell.throttle.travel", CAR.without("footwell.throttle.travel"));
        refused("footwell.throttle.pad", CAR.with("footwell.throttle.pad.up: 490 mm"));
        refused("footwell.throttle.pad.left", CAR.with("footwell.throttle.pad.left: 280 mm"));
        refused("footwell.left_wall", CAR.with("footwell.left_wall: 400 mm"));
        refused("footwell.right_wall", CAR.with("footwell.right_wall: 230 mm"));
        refused("footwell.throttle", CAR.with("footwell.throttle.pad.up: 440 mm\nfootwell.throttle.travel: 200 mm"));
        refused("footwell.obstacles[0].to", CAR.with(box("300 mm")));
        refused("footwell.clutch.travel", CAR.without("footwell.clutch.travel"));
    }

    private static void refused(String path, WrittenCar car) {
        assertThat(car.problems()).as(path).singleElement().satisfies(problem -> {
            assertThat(problem.path()).isEqualTo(path);
            assertThat(problem.message()).endsWith(".");
            assertThat(problem.allowed()).isNotBlank();
        });
    }

    private static SweepState sweep(FootwellState state) {
        return state.sweeps().stream()
                .filter(each -> each.which() == Which.BRAKE)
                .findFirst()
                .orElseThrow();
    }

    private static PadState pad(FootwellState state, Which which) {
        return state.pads().stream()
                .filter(each -> each.which() == which)
                .findFirst()
                .orElseThrow();
    }

    private static FootwellState state(WrittenCar car) {
        return requireNonNull(analysis(car).footwell());
    }

    private static Analysis analysis(WrittenCar car) {
        return Analyse.analyse(car.resolved());
    }
}
