package org.brakewright.findings.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.brakewright.findings.TestCar;
import org.brakewright.findings.cure.Change.Kind;
import org.junit.jupiter.api.Test;

class ChangesTest {
    @Test
    void leastWorkComesFirst() {
        assertThat(of(TestCar.twin().withRearDrums("3/4 in")))
                .extracting(Change::kind)
                .isSorted()
                .contains(Kind.TURN_BAR, Kind.FRONT_BORE, Kind.REAR_BORE, Kind.REAR_WHEEL_CYLINDER)
                .contains(Kind.PEDAL_RATIO, Kind.FIT_VALVE)
                .doesNotContain(Kind.SET_KNEE, Kind.TANDEM_BORE, Kind.FRONT_WHEEL_CYLINDER);
    }

    @Test
    void smallestComesFirstWithinAKind() {
        assertThat(amounts(TestCar.twin(), Kind.TURN_BAR)).startsWith(1.0, -1.0, 2.0, -2.0);
        assertThat(amounts(TestCar.twin(), Kind.PEDAL_RATIO)).startsWith(0.25, -0.25, 0.5);
    }

    /** 1 mm a turn, 10 mm either way, bearing 7.5 mm toward the front: two turns are left that way. */
    @Test
    void theBarStopsAtItsLimit() {
        TestCar car = TestCar.twin().with("apply.balance_bar.offset", "7.5 mm");
        assertThat(amounts(car, Kind.TURN_BAR)).containsOnlyOnce(2.0, -8.0).doesNotContain(3.0);
        assertThat(changes(car, Kind.TURN_BAR))
                .flatExtracting(change -> change.values().values())
                .asInstanceOf(InstanceOfAssertFactories.list(Double.class))
                .allMatch(offset -> Math.abs(offset) <= 0.010 + 1e-12);
    }

    @Test
    void turnsMoveTheBearingByThePitch() {
        Change turn = changes(TestCar.twin().with("apply.balance_bar.movement_per_turn", "0.9 mm"), Kind.TURN_BAR)
                .getFirst();
        assertThat(turn.values().get("apply.balance_bar.offset")).isCloseTo(0.9e-3, within(1e-12));
    }

    /** 0.70 in is the second stock size: one step down, three up. */
    @Test
    void boresAreStockBores() {
        assertThat(amounts(TestCar.twin(), Kind.FRONT_BORE)).containsExactly(1.0, -1.0, 2.0, 3.0);
        assertThat(changes(TestCar.twin(), Kind.REAR_BORE).getFirst().values().get("apply.rear_master.bore"))
                .isCloseTo(0.75 * 0.0254, within(1e-12));
        assertThat(changes(TestCar.tandem(), Kind.TANDEM_BORE)
                        .getFirst()
                        .values()
                        .get("apply.bore"))
                .isCloseTo(0.9375 * 0.0254, within(1e-12));
    }

    @Test
    void noSecondValveIsOffered() {
        assertThat(kinds(TestCar.tandem())).contains(Kind.FIT_VALVE).doesNotContain(Kind.SET_KNEE);
        assertThat(kinds(TestCar.tandem().withValve("30 bar", "0.3", true)))
                .contains(Kind.SET_KNEE)
                .doesNotContain(Kind.FIT_VALVE);
        assertThat(kinds(TestCar.tandem().withValve("30 bar", "0.3", false)))
                .doesNotContain(Kind.FIT_VALVE, Kind.SET_KNEE);
    }

    /** Knee 3 bar: 2 bar down is left, 4 bar down is not. */
    @Test
    void aKneeStaysAboveNothingAndKeepsItsSlope() {
        TestCar car = TestCar.tandem().withValve("3 bar", "0.4", true);
        assertThat(amounts(car, Kind.SET_KNEE)).contains(-2e5).allMatch(step -> step > -3e5);
        assertThat(changes(car, Kind.SET_KNEE))
                .allSatisfy(change -> assertThat(change.values().get("apply.proportioning_valve.slope"))
                        .isEqualTo(0.4));
    }

    @Test
    void aLinkageIsNotARatioToWrite() {
        TestCar car = TestCar.twin()
                .without("pedal.ratio")
                .with("pedal.linkage.pad_arm", "275 mm")
                .with("pedal.linkage.pushrod_arm", "50 mm");
        assertThat(kinds(car)).doesNotContain(Kind.PEDAL_RATIO);
    }

    private static List<Change> of(TestCar car) {
        return Changes.of(car.build(), car.facts().build());
    }

    private static List<Kind> kinds(TestCar car) {
        return of(car).stream().map(Change::kind).toList();
    }

    private static List<Change> changes(TestCar car, Kind kind) {
        return of(car).stream().filter(change -> change.kind() == kind).toList();
    }

    private static List<Double> amounts(TestCar car, Kind kind) {
        return changes(car, kind).stream().map(Change::amount).toList();
    }
}
