package org.brakewright.analysis.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.vehicle.HardStop;
import org.junit.jupiter.api.Test;

/** The opened results end at the numbers they explain, and each step follows from the numbers shown in it. */
class WorkingsTest {
    private static final WrittenCar TWIN =
            Cars.TWIN.with("apply.front_master.spring_force: 30 N\nrear.threshold_pressure: 0.5 bar");

    private static List<Step> steps(WrittenCar car, String key) {
        return Workings.of(car.resolved(), car.analysis()).stream()
                .filter(working -> working.key().equals(key))
                .findFirst()
                .orElseThrow()
                .steps();
    }

    private static double operand(Step step, String symbol) {
        return step.operands().stream()
                .filter(each -> each.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static Step step(List<Step> steps, String law, String place) {
        return steps.stream()
                .filter(each -> each.law().equals(law) && each.place().equals(place))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theEffortStartsAtTheForceWantedAndEndsThere() {
        List<Step> steps = steps(TWIN, "effort");
        assertThat(steps.getFirst().result()).isCloseTo(1000 * 0.9 * 9.80665, withinPercentage(1e-9));
        assertThat(steps.getLast().result()).isCloseTo(steps.getFirst().result(), withinPercentage(1e-9));
        assertThat(operand(step(steps, "pedal_lever", ""), "F"))
                .isEqualTo(TWIN.hardStop().point().pedalForceN());
    }

    @Test
    void everyStepOfTheEffortFollowsFromItsOwnNumbers() {
        List<Step> steps = steps(TWIN, "effort");
        Step lever = step(steps, "pedal_lever", "");
        assertThat(lever.result())
                .isCloseTo(operand(lever, "F") * operand(lever, "R") * operand(lever, "eta"), withinPercentage(1e-12));
        Step share = step(steps, "bar_share", "");
        assertThat(share.result()).isCloseTo(0.5 + operand(share, "e") / operand(share, "w"), within(1e-12));
        for (String place : List.of("front", "rear")) {
            Step master = step(steps, "master_pressure", place);
            double pressure = (operand(master, "F") - operand(master, "F_s")) / operand(master, "A");
            assertThat(master.result()).isCloseTo(pressure, withinPercentage(1e-9));
            Step disc = step(steps, "disc_force", place);
            assertThat(operand(disc, "p")).isCloseTo(pressure, withinPercentage(1e-9));
            double clamp = (operand(disc, "p") - operand(disc, "p_0")) * operand(disc, "A");
            assertThat(disc.result())
                    .isCloseTo(
                            4 * operand(disc, "mu") * clamp * operand(disc, "r_e") / operand(disc, "r"),
                            withinPercentage(1e-9));
        }
    }

    /** A hung pedal with a level rod of 120 mm on an arm of 60 mm (slider-crank, any textbook). */
    @Test
    void aMechanismShowsItsRatioAtTheHardStopAndOverTheWay() {
        WrittenCar car = TWIN.without("pedal.ratio").with(Cars.HUNG_PEDAL).with("""
                front.running_clearance: 0.5 mm
                rear.running_clearance: 0.5 mm
                """);
        Step ratio = step(steps(car, "effort"), "linkage_ratio", "");
        double turned = operand(ratio, "s_p") / 0.300;
        double lean = Math.asin(0.060 * (1 - Math.cos(turned)) / 0.120);
        assertThat(ratio.result())
                .isCloseTo(5 / (Math.cos(turned) - Math.tan(lean) * Math.sin(turned)), withinPercentage(1e-6));
        assertThat(ratio.result()).isCloseTo(operand(ratio, "r_p") / operand(ratio, "ds/da"), withinPercentage(1e-9));
        assertThat(operand(step(steps(car, "effort"), "pedal_lever", ""), "R")).isEqualTo(ratio.result());
        Step mean = step(steps(car, "travel"), "linkage_travel", "");
        assertThat(mean.result()).isCloseTo(operand(mean, "s_p") / operand(mean, "s_r"), withinPercentage(1e-9));
        assertThat(mean.result()).isBetween(5.0, ratio.result());
        assertThat(steps(car, "travel").getLast().law()).isEqualTo("travel_sum");
    }

    @Test
    void aTandemWithBoosterValveAndDrumOpensToo() {
        WrittenCar car = Cars.TANDEM.with(Cars.BOOSTER).without("rear").with("""
                rear.kind: drum
                rear.shoes: leading_trailing
                rear.brake_factor: 2.3
                rear.drum_radius: 110 mm
                rear.wheel_cylinder: 19 mm
                rear.threshold_pressure: 3 bar
                rear.shoe_movement: 0.8 mm
                rear.shoe_compression: 0.04 mm/MPa
                apply.spring_force: 40 N
                apply.proportioning_valve.knee: 1 MPa
                apply.proportioning_valve.slope: 0.4
                """);
        List<Step> steps = steps(car, "effort");
        Step booster = step(steps, "booster", "");
        assertThat(booster.result())
                .isCloseTo(operand(booster, "F_in") * operand(booster, "G"), withinPercentage(1e-9));
        double pressure = (booster.result() - 40) / (Math.PI / 4 * 0.02 * 0.02);
        assertThat(step(steps, "master_pressure", "").result()).isCloseTo(pressure, withinPercentage(1e-9));
        Step valve = step(steps, "proportioning_valve", "rear");
        assertThat(valve.result()).isCloseTo(1e6 + 0.4 * (pressure - 1e6), withinPercentage(1e-9));
        Step drum = step(steps, "drum_force", "rear");
        double push = (valve.result() - operand(drum, "p_0")) * operand(drum, "A");
        assertThat(drum.result())
                .isCloseTo(
                        2 * operand(drum, "C*") * push * operand(drum, "r_d") / operand(drum, "r"),
                        withinPercentage(1e-9));
    }

    /** Every formula of the working, put in again by hand, gives the step's own result: moments about the bearing, B15. */
    @Test
    void aTurnedBarWithStiffeningSpringsAndAMeteringValveOpensToItsOwnNumbers() {
        WrittenCar car = Cars.TWIN.with("""
                front.running_clearance: 0.3 mm
                apply.balance_bar.pin_set_back: 6 mm
                apply.balance_bar.master_spacing: 64 mm
                apply.front_master.spring_force: 30 N
                apply.front_master.spring_rate: 2 N/mm
                apply.front_master.seal_friction: 10 N
                apply.metering_valve.opening: 3 bar
                apply.metering_valve.blend: 80 bar
                """);
        List<Step> steps = steps(car, "effort");
        Step bar = step(steps, "bar_share_turned", "");
        double t = operand(bar, "t");
        double lean = Math.tan(operand(bar, "l"));
        double frontArm = operand(bar, "a") * Math.cos(t)
                + operand(bar, "d") * Math.sin(t)
                + (operand(bar, "a") * Math.sin(t) - operand(bar, "d") * Math.cos(t)) * lean;
        double rearArm = operand(bar, "b") * Math.cos(t)
                - operand(bar, "d") * Math.sin(t)
                - (operand(bar, "b") * Math.sin(t) + operand(bar, "d") * Math.cos(t)) * lean;
        assertThat(bar.result())
                .isCloseTo(rearArm / (frontArm + rearArm), within(1e-9))
                .isNotEqualTo(0.5);
        Step spring = step(steps, "spring_force", "front");
        assertThat(spring.result()).isCloseTo(40 + 2000 * operand(spring, "s"), within(1e-9));
        Step master = step(steps, "master_pressure", "front");
        double thrust = step(steps, "pedal_lever", "").result();
        assertThat(operand(master, "F")).isCloseTo(thrust * bar.result(), withinPercentage(1e-6));
        assertThat(master.result())
                .isCloseTo((operand(master, "F") - spring.result()) / operand(master, "A"), withinPercentage(1e-6));
        Step valve = step(steps, "metering_valve", "front");
        double blending = (master.result() - 3e5) * 80e5 / (80e5 - 3e5);
        assertThat(valve.result()).isCloseTo(Math.min(master.result(), blending), withinPercentage(1e-9));
        assertThat(operand(step(steps, "disc_force", "front"), "p")).isCloseTo(valve.result(), withinPercentage(1e-6));
    }

    @Test
    void theTravelIsTheSumOfItsShares() {
        WrittenCar car = TWIN.with("pedal.free_play: 3 mm\nfront.running_clearance: 0.1 mm\nfluid.free_air: 0.001")
                .with("lines.front.trapped_volume: 30 cc\npedal.mount_stiffness: 200 N/mm");
        Step travel = steps(car, "travel").getLast();
        assertThat(travel.operands()).hasSizeGreaterThan(4);
        assertThat(travel.operands().stream().mapToDouble(Step.Operand::value).sum())
                .isCloseTo(travel.result(), within(1e-12));
        assertThat(travel.result()).isEqualTo(car.hardStop().point().pedalTravelM());
    }

    @Test
    void theBalanceShowsTheSharesOfTheHardStop() {
        List<Step> steps = steps(TWIN, "balance");
        HardStop stop = TWIN.hardStop();
        Step installed = step(steps, "front_share", "");
        assertThat(installed.result()).isEqualTo(stop.frontShare());
        assertThat(installed.result())
                .isCloseTo(
                        operand(installed, "F_f") / (operand(installed, "F_f") + operand(installed, "F_r")),
                        within(1e-12));
        Step ideal = step(steps, "ideal_share", "");
        assertThat(ideal.result()).isEqualTo(stop.idealFrontShare());
        assertThat(ideal.result())
                .isCloseTo(
                        operand(ideal, "m_f") / operand(ideal, "m")
                                + operand(ideal, "z") * operand(ideal, "h") / operand(ideal, "L"),
                        within(1e-12));
    }

    /** Split 2/3 to the front: rear first from (0.5 - 1/3)/0.2 on (row A5's closed form). */
    @Test
    void theMarginEndsAtTheCriticalDeceleration() {
        Step margin = steps(Cars.TWIN, "margin").getLast();
        assertThat(margin.place()).isEqualTo("driver");
        assertThat(margin.result()).isCloseTo((0.5 - 1 / 3.0) / 0.2 * 9.80665, withinPercentage(1e-9));
    }

    @Test
    void aStopThatNoPushGivesIsNotOpened() {
        WrittenCar weak = Cars.TWIN
                .with("front.pad_friction: 0.05\nrear.pad_friction: 0.05")
                .with("apply.front_master.bore: 60 mm\napply.rear_master.bore: 60 mm\nfront.pistons[0]: 10 mm")
                .with("rear.pistons[0]: 10 mm");
        assertThat(weak.analysis().hardStop()).isNull();
        assertThat(Workings.of(weak.resolved(), weak.analysis()))
                .extracting(Working::key)
                .doesNotContain("effort", "travel", "balance");
    }

    /** Row C1 of the check values: shoes of 0.841284 and 0.437517 (Shigley's Mechanical Engineering Design, problem 16-1). */
    @Test
    void aBrakeFactorEndsAtTheSumOfItsShoes() {
        List<Step> steps = steps(Cars.TANDEM.without("rear").with("""
                        rear.kind: drum
                        rear.shoes: leading_trailing
                        rear.drum_radius: 150 mm
                        rear.wheel_cylinder: 22 mm
                        rear.lining_friction: 0.28
                        rear.shoe_geometry.pivot_distance: 125 mm
                        rear.shoe_geometry.actuation_arm: 216.50635 mm
                        rear.shoe_geometry.lining_start: 0 deg
                        rear.shoe_geometry.lining_end: 120 deg
                        """), "drum_factor");
        assertThat(step(steps, "leading_shoe", "rear, first shoe").result()).isCloseTo(0.841284, within(1e-6));
        assertThat(step(steps, "trailing_shoe", "rear, second shoe").result()).isCloseTo(0.437517, within(1e-6));
        Step sum = steps.getLast();
        assertThat(sum.result()).isCloseTo(operand(sum, "S_1") + operand(sum, "S_2"), within(1e-12));
    }

    /** Weak lever: by force, 120 N m x 2 / 300 mm on 1000 kg; strong lever: by grip, 0.9 x 0.5/(1 + 0.9 x 0.2). */
    @Test
    void aGradeHeldEndsAtForceOrGrip() {
        WrittenCar weak = Cars.TANDEM.with("""
                parking.control: hand
                parking.driver_force: 100 N
                parking.lever_ratio: 5
                parking.cable_efficiency: 0.8
                parking.axle: rear
                parking.acts_on.kind: caliper_lever
                parking.acts_on.pad_force_ratio: 20
                parking.acts_on.pad_friction: 0.25
                """);
        Step byForce = steps(weak, "parking_hold").getLast();
        assertThat(byForce.law()).isEqualTo("grade_by_force");
        assertThat(operand(byForce, "F_b")).isCloseTo(800, within(1e-9));
        Step byGrip =
                steps(weak.with("parking.driver_force: 1000 N"), "parking_hold").getLast();
        assertThat(byGrip.law()).isEqualTo("grade_by_grip_upper");
        assertThat(byGrip.result()).isCloseTo(0.45 / 1.18, within(1e-9));
    }
}
