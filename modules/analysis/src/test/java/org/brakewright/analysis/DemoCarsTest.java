package org.brakewright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.brakewright.analysis.vehicle.HardStop;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Eight generic cars against figures worked out beforehand with a simpler model of the same physics (plausibility, ranges
 * from the trade, no source): chain efficiency 0.85, take-up of pads and shoes times 1.2, lost stroke, nothing else.
 * Told the same, the product must print the same: every tolerance is half a step of the printed digit, plus the 0.03 % by
 * which the g of those figures, 9.81, differs from the standard one.
 */
class DemoCarsTest {
    private static final String SAME_FRONT_AND_REAR = """
            front.pistons[0]: 36 mm
            front.pistons[1]: 36 mm
            front.effective_radius: 95 mm
            front.pad_friction: 0.40
            """;

    private static final WrittenCar CLUBMAN = car(Cars.TWIN, 680, 0.48, """
            car.wheelbase: 2350 mm
            car.load_cases[0].cg_height: 400 mm
            car.front_tyre_radius: 285 mm
            car.rear_tyre_radius: 285 mm
            pedal.ratio: 5.0
            """);

    /** D1: disc and drum, 0.70 in masters. */
    private static final WrittenCar D1 = masters(
            drum(
                    CLUBMAN.with("front.pistons[0]: 48 mm\nfront.effective_radius: 92 mm\nfront.pad_friction: 0.36"),
                    "101 mm",
                    "19.05 mm",
                    "2.3"),
            "0.70 in",
            "0.70 in");

    /** D2: four equal discs, 0.625 in masters. */
    private static final WrittenCar D2 = masters(
            CLUBMAN.with(SAME_FRONT_AND_REAR).with(SAME_FRONT_AND_REAR.replace("front", "rear")),
            "0.625 in",
            "0.625 in");

    /** D3: roadster replica, 0.75 in masters. */
    private static final WrittenCar D3 = masters(car(Cars.TWIN, 1150, 0.48, """
            car.wheelbase: 2290 mm
            car.load_cases[0].cg_height: 460 mm
            car.front_tyre_radius: 320 mm
            car.rear_tyre_radius: 330 mm
            front.pistons[0]: 44.5 mm
            front.pistons[1]: 44.5 mm
            front.effective_radius: 128 mm
            front.pad_friction: 0.40
            rear.pistons[0]: 38 mm
            rear.pistons[1]: 38 mm
            rear.effective_radius: 125 mm
            rear.pad_friction: 0.40
            pedal.ratio: 5.5
            """), "0.75 in", "0.75 in");

    /** D4: street rod, 1.25 in tandem. */
    private static final WrittenCar D4 = drum(car(Cars.TANDEM, 1250, 0.50, """
            car.wheelbase: 2845 mm
            car.load_cases[0].cg_height: 510 mm
            car.front_tyre_radius: 315 mm
            car.rear_tyre_radius: 345 mm
            front.pistons[0]: 2.75 in
            front.effective_radius: 118 mm
            front.pad_friction: 0.36
            pedal.ratio: 5.0
            apply.bore: 1.25 in
            """), "127 mm", "13/16 in", "4.0");

    /** D6: coupe without booster, 0.9375 in tandem. */
    private static final WrittenCar D6 = car(Cars.TANDEM, 1650, 0.54, """
            car.wheelbase: 2750 mm
            car.load_cases[0].cg_height: 540 mm
            car.front_tyre_radius: 330 mm
            car.rear_tyre_radius: 335 mm
            front.pistons[0]: 2.75 in
            front.effective_radius: 128 mm
            front.pad_friction: 0.38
            rear.pistons[0]: 1.75 in
            rear.effective_radius: 125 mm
            rear.pad_friction: 0.38
            pedal.ratio: 6.0
            apply.bore: 0.9375 in
            """);

    /** D5: the same car with a booster of gain 3.5 and 1.125 in. */
    private static final WrittenCar D5 =
            D6.with("pedal.ratio: 4.0\napply.bore: 1.125 in").with(Cars.BOOSTER).with("apply.booster.ratio: 3.5");

    /** D7: mid-engine coupe, 0.70 and 0.75 in masters, bar 52 % to the front. */
    private static final WrittenCar D7 = masters(car(Cars.TWIN, 1050, 0.42, """
            car.wheelbase: 2420 mm
            car.load_cases[0].cg_height: 430 mm
            car.front_tyre_radius: 310 mm
            car.rear_tyre_radius: 330 mm
            front.pistons[0]: 41.3 mm
            front.pistons[1]: 41.3 mm
            front.effective_radius: 130 mm
            front.pad_friction: 0.40
            rear.pistons[0]: 38 mm
            rear.pistons[1]: 38 mm
            rear.effective_radius: 128 mm
            rear.pad_friction: 0.40
            pedal.ratio: 5.2
            apply.balance_bar.offset: 1.2 mm
            """), "0.70 in", "0.75 in");

    /** D8: pickup, booster of gain 3.0, no valve. */
    private static final WrittenCar D8 = drum(
            car(Cars.TANDEM, 1700, 0.56, """
            car.wheelbase: 2920 mm
            car.load_cases[0].cg_height: 640 mm
            car.front_tyre_radius: 360 mm
            car.rear_tyre_radius: 360 mm
            front.pistons[0]: 2.9375 in
            front.effective_radius: 122 mm
            front.pad_friction: 0.36
            pedal.ratio: 4.2
            apply.bore: 1.125 in
            """).with(Cars.BOOSTER).with("apply.booster.ratio: 3.0"),
            "140 mm",
            "7/8 in",
            "4.0");

    private static WrittenCar car(WrittenCar basis, double mass, double frontShare, String lines) {
        return basis.with("pedal.efficiency: 0.85\nintent.hard_stop: 1 g\npedal.travel_to_stop: 300 mm")
                .with("car.load_cases[0].front_axle", mass * frontShare)
                .with("car.load_cases[0].rear_axle", mass * (1 - frontShare))
                .with(lines);
    }

    private static WrittenCar drum(WrittenCar car, String radius, String cylinder, String factor) {
        return car.without("rear")
                .with("""
                rear.kind: drum
                rear.shoes: leading_trailing
                rear.threshold_pressure: 0 bar
                rear.shoe_compression: 0 mm/MPa
                """)
                .with("rear.drum_radius: %s\nrear.wheel_cylinder: %s\nrear.brake_factor: %s"
                        .formatted(radius, cylinder, factor));
    }

    private static WrittenCar masters(WrittenCar car, String front, String rear) {
        return car.with("apply.front_master.bore: %s\napply.rear_master.bore: %s".formatted(front, rear));
    }

    private static WrittenCar named(String id) {
        return switch (id) {
            case "D1" -> D1;
            case "D1 with 0.625" -> masters(D1, "0.625 in", "0.625 in");
            case "D2" -> D2;
            case "D2 cured" -> masters(D2, "0.625 in", "0.75 in").with("apply.balance_bar.offset: 4.2 mm");
            case "D3" -> D3;
            case "D3 cured" -> masters(D3, "0.70 in", "0.8125 in").with("apply.balance_bar.offset: 1.8 mm");
            case "D4" -> D4;
            case "D4 cured" -> D4.with("apply.bore: 1 in\npedal.ratio: 6");
            case "D5" -> D5;
            case "D6" -> D6;
            case "D7" -> D7;
            case "D8" -> D8;
            default -> throw new IllegalArgumentException(id);
        };
    }

    @ParameterizedTest
    @CsvSource({
        "D1, 597", "D1 with 0.625, 476", "D2, 286", "D2 cured, 329", "D3, 409", "D3 cured, 390",
        "D4, 748", "D4 cured, 399", "D5, 278", "D6, 450", "D7, 380", "D8, 299"
    })
    void theEffortForOneGIsTheForeseenOne(String id, double effort) {
        assertThat(named(id).hardStop().point().pedalForceN()).isCloseTo(effort, within(0.5 + 0.0003 * effort));
    }

    @ParameterizedTest
    @CsvSource({"D1, 51, 51", "D4, 40, 40", "D5, 52, 52", "D7, 35, 28"})
    void thePressuresAreTheForeseenOnes(String id, double front, double rear) {
        HardStop stop = named(id).hardStop();
        assertThat(stop.point().frontPressurePa() / 1e5).isCloseTo(front, within(0.5 + 0.0003 * front));
        assertThat(stop.point().rearPressurePa() / 1e5).isCloseTo(rear, within(0.5 + 0.0003 * rear));
    }

    @ParameterizedTest
    @CsvSource({"D2, 50, 65", "D3, 59, 68"})
    void theFrontShareFallsShortOfTheIdeal(String id, double percent, double ideal) {
        HardStop stop = named(id).hardStop();
        assertThat(100 * stop.frontShare()).isCloseTo(percent, within(0.5));
        assertThat(100 * stop.idealFrontShare()).isCloseTo(ideal, within(0.5));
    }

    @ParameterizedTest
    @CsvSource({"D1, 0.96", "D2, 0.12", "D2 cured, 1.04", "D3, 0.56", "D3 cured, 1.03", "D8, 0.36"})
    void theRearIsFirstFromTheForeseenDecelerationOn(String id, double g) {
        assertThat(named(id).loadCase().criticalDecelerationG()).isCloseTo(g, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({
        "D1, 30, 49",
        "D1 with 0.625, 36, 60",
        "D4, 36, 57",
        "D4 cured, 60, 100",
        "D5, 32, 56",
        "D6, 64, 116",
        "D7, 42, 77"
    })
    void theTravelRunsFromFirmToSoft(String id, double firm, double soft) {
        assertThat(travel(id, 0.15e-3, 0.8e-3)).isCloseTo(firm, within(0.5));
        assertThat(travel(id, 0.30e-3, 1.2e-3)).isCloseTo(soft, within(0.5));
    }

    /** D12: shoes neglected to 2.5 mm instead of 0.8 mm a piston; discs firm. */
    @ParameterizedTest
    @CsvSource({"D4, 36, 53", "D8, 39, 60"})
    void neglectedDrumsDropThePedal(String id, double adjusted, double neglected) {
        assertThat(travel(id, 0.15e-3, 0.8e-3)).isCloseTo(adjusted, within(0.5));
        assertThat(travel(id, 0.15e-3, 2.5e-3)).isCloseTo(neglected, within(0.5));
    }

    /** D5: with a dead booster 486 N give 0.5 g, so the 500 N of the failure give 500/486 of that. */
    @Test
    void aDeadBoosterStillStopsTheCoupe() {
        double effort = 0.5 * 500 / D5.analysis().failures().getLast().decelerationG();
        assertThat(effort).isCloseTo(486, within(0.5 + 0.0003 * 486));
    }

    /** Millimetres at the pad with the simple model's take-up: times 1.2, and 1.2 mm lost in a master or 2 mm in a tandem. */
    private static double travel(String id, double padTakeUp, double shoeTakeUp) {
        WrittenCar car = named(id).with("front.running_clearance", 1.2 * padTakeUp);
        boolean drum = id.startsWith("D1") || id.startsWith("D4") || id.startsWith("D8");
        boolean twin = id.startsWith("D1") || id.startsWith("D7");
        car = drum
                ? car.with("rear.shoe_movement", 1.2 * shoeTakeUp)
                : car.with("rear.running_clearance", 1.2 * padTakeUp);
        car = twin
                ? car.with("apply.front_master.lost_stroke: 1.2 mm\napply.rear_master.lost_stroke: 1.2 mm")
                : car.with("apply.lost_stroke: 2 mm");
        return 1000 * car.hardStop().point().pedalTravelM();
    }
}
