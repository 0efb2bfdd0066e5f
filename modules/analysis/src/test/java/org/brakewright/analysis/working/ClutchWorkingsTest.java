package org.brakewright.analysis.working;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.analysis.working.OpenedCar.operand;

import java.util.stream.Stream;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.clutch.Clutches;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every formula of the clutch, put in again by hand, gives the step's own result, and the last one the number that is judged. */
class ClutchWorkingsTest {
    static Stream<WrittenCar> everyKind() {
        String soft = """
                clutch.pedal.slack: 0.3 mm
                clutch.pedal.arm_stiffness: 300 N/mm
                clutch.master.lost_stroke: 1 mm
                clutch.master.spring_force: 20 N
                clutch.master.spring_rate: 1 N/mm
                clutch.master.seal_friction: 15 N
                clutch.line.hose_length: 0.4 m
                clutch.line.hose_expansion: 1 cc/m
                """;
        return Stream.of(Clutches.FORK, Clutches.FORK.with(soft), Clutches.RING.with(soft), Clutches.SPRUNG.with(soft));
    }

    private static ClutchState state(OpenedCar open) {
        return requireNonNull(open.analysis().clutch());
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void theEffortFollowsFromTheCover(WrittenCar car) {
        OpenedCar open = OpenedCar.of(car);
        Step cover = open.step("clutch_effort", "clutch_cover");
        Step pressure = open.step("clutch_effort", "clutch_pressure");
        Step pedal = open.step("clutch_effort", "clutch_pedal");
        assertThat(operand(pressure, "F_b")).isEqualTo(cover.result());
        assertThat(pressure.result())
                .isCloseTo(
                        cover.result() / operand(pressure, "i") / operand(pressure, "A_s") / operand(pressure, "eta"),
                        withinPercentage(1e-9));
        double push = pressure.result() * operand(pedal, "A_m") + operand(pedal, "F_s") + operand(pedal, "F_k");
        assertThat(pedal.result())
                .isCloseTo(
                        push / operand(pedal, "R") / operand(pedal, "eta") + operand(pedal, "F_p"),
                        withinPercentage(1e-9))
                .isEqualTo(state(open).heaviest().mostEffortN());
    }

    @ParameterizedTest
    @MethodSource("everyKind")
    void theBearingsTravelFollowsFromThePedals(WrittenCar car) {
        OpenedCar open = OpenedCar.of(car);
        Step stroke = open.step("clutch_release", "clutch_master_stroke");
        double atRod = operand(stroke, "S") - operand(stroke, "y") - operand(stroke, "S_0");
        assertThat(stroke.result())
                .isCloseTo(atRod / operand(stroke, "R") - operand(stroke, "k"), withinPercentage(1e-9));
        Step line = open.step("clutch_release", "clutch_line");
        assertThat(line.operands().stream().mapToDouble(Step.Operand::value).sum())
                .isCloseTo(line.result(), within(1e-15));
        Step bearing = open.step("clutch_release", "clutch_bearing");
        double moved = (stroke.result() - operand(bearing, "l")) * operand(bearing, "A_m") - line.result();
        double onBearing = moved / operand(bearing, "i") / operand(bearing, "A_s");
        assertThat(bearing.result())
                .isCloseTo(onBearing - operand(bearing, "d") - operand(bearing, "g"), within(1e-12))
                .isEqualTo(state(open).leastFree().bearingTravelM());
        Step slave = open.step("clutch_slave_stroke", "clutch_slave_left");
        assertThat(slave.result()).isCloseTo(operand(slave, "a") - operand(slave, "w"), within(1e-15));
        double tightest = Math.min(
                state(open).newPlate().extensionLeftM(), state(open).wornPlate().extensionLeftM());
        assertThat(slave.result()).isEqualTo(tightest);
    }

    @Test
    void whatFreesTheClutchIsOpenedWhereItFollowsFromTheSpring() {
        OpenedCar open = OpenedCar.of(Clutches.SPRUNG);
        Step needed = open.step("clutch_release", "clutch_needed");
        assertThat(needed.result())
                .isCloseTo(
                        operand(needed, "x_l") + operand(needed, "f") * operand(needed, "c"), withinPercentage(1e-12))
                .isEqualTo(state(open).leastFree().neededM());
        assertThat(OpenedCar.of(Clutches.FORK).steps("clutch_release"))
                .extracting(Step::law)
                .doesNotContain("clutch_needed");
    }

    /** T = n mu P (r_o + r_i)/2 (row E1's formula), here of two faces. */
    @ParameterizedTest
    @MethodSource("everyKind")
    void theTorqueFollowsFromTheClamp(WrittenCar car) {
        OpenedCar open = OpenedCar.of(car);
        Step torque = open.step("clutch_slip", "clutch_torque");
        double radius = (operand(torque, "r_o") + operand(torque, "r_i")) / 2;
        assertThat(torque.result())
                .isCloseTo(
                        operand(torque, "n") * operand(torque, "mu") * operand(torque, "P") * radius,
                        withinPercentage(1e-9));
        assertThat(open.step("clutch_slip", "clutch_reserve").result())
                .isCloseTo(torque.result() / 300, withinPercentage(1e-9));
        Step last = OpenedCar.of(car.without("clutch.engine_torque"))
                .steps("clutch_slip")
                .getLast();
        assertThat(last.law()).isEqualTo("clutch_torque");
    }

    @Test
    void aCarWithoutAClutchOpensNone() {
        assertThat(OpenedCar.of(Cars.TANDEM).workings())
                .extracting(Working::key)
                .noneMatch(key -> key.startsWith("clutch"));
    }
}
