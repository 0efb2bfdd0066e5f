package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.analysis.resolve.Refused.assertOnly;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values that cannot stand together are refused by name, all at once. */
class ContradictionsTest {
    private static final String LINKAGE = "pedal.linkage.pad_arm: 250 mm\npedal.linkage.pushrod_arm: 50 mm";

    private static final String PAD = """
            front.pad.inner_radius: 90 mm
            front.pad.outer_radius: 130 mm
            front.pad.pressure: uniform_wear
            """;

    private static final String LIFT = """
            car.load_cases[0].axle_lift.raised: rear
            car.load_cases[0].axle_lift.rise: 600 mm
            car.load_cases[0].axle_lift.lower_axle: 540 kg
            """;

    @Test
    void thePlainCarsHoldTogether() {
        assertThat(Cars.TWIN.problems()).isEmpty();
        assertThat(Cars.TANDEM.problems()).isEmpty();
    }

    @Test
    void theRatioIsGivenOnce() {
        assertOnly(Cars.TWIN.with(LINKAGE), "pedal.ratio", "5");
        assertOnly(Cars.TWIN.without("pedal.ratio"), "pedal.ratio", "");
        assertThat(Cars.TWIN.without("pedal.ratio").with(LINKAGE).problems()).isEmpty();
    }

    @Test
    void thePushrodPinIsNearerThanThePad() {
        assertOnly(
                Cars.TWIN.without("pedal.ratio").with(LINKAGE).with("pedal.linkage.pushrod_arm: 250 mm"),
                "pedal.linkage.pushrod_arm",
                "250 mm");
    }

    @Test
    void theEffectiveRadiusIsGivenOnce() {
        assertOnly(Cars.TWIN.with(PAD), "front.effective_radius", "120 mm");
        assertOnly(Cars.TWIN.without("front.effective_radius"), "front.effective_radius", "");
        assertOnly(
                Cars.TWIN.without("front.effective_radius").with(PAD).with("front.pad.inner_radius: 130 mm"),
                "front.pad.inner_radius",
                "130 mm");
    }

    @ParameterizedTest
    @CsvSource({
        "apply.balance_bar.offset, 30 mm",
        "apply.balance_bar.offset, -30 mm",
        "apply.balance_bar.offset, 11 mm",
        "apply.balance_bar.offset_limit, 30 mm",
        "apply.front_master.lost_stroke, 28 mm",
        "apply.rear_master.lost_stroke, 28 mm",
        "lines.front.tube_wall, 2.375 mm"
    })
    void onePartOutOfPlaceIsNamed(String path, String value) {
        assertOnly(Cars.TWIN.with(path + ": " + value), path, value);
    }

    @Test
    void noChamberOfATandemLosesItsWholeStroke() {
        assertOnly(
                Cars.TANDEM.with("apply.secondary_stroke: 5 mm\napply.lost_stroke: 10 mm"),
                "apply.lost_stroke",
                "10 mm");
    }

    @Test
    void theHeightIsGivenOnce() {
        assertOnly(Cars.TWIN.with(LIFT), "car.load_cases[0].cg_height", "480 mm");
    }

    @ParameterizedTest
    @CsvSource({"rise, 1700 mm", "lower_axle, 1000 kg", "lower_axle, 460 kg", "lower_axle, 900 kg"})
    void anAxleLiftThatCannotBeIsRefused(String key, String value) {
        WrittenCar lifted = Cars.TWIN.without("car.load_cases[0].cg_height").with(LIFT);
        assertThat(lifted.problems()).isEmpty();
        String path = "car.load_cases[0].axle_lift." + key;
        assertOnly(lifted.with(path + ": " + value), path, value);
    }

    @Test
    void allContradictionsAreToldAtOnce() {
        WrittenCar car = Cars.TWIN
                .with(LINKAGE)
                .with(PAD)
                .with(LIFT)
                .with("apply.balance_bar.offset: 31 mm\napply.rear_master.lost_stroke: 30 mm")
                .with("lines.rear.tube_wall: 3 mm");
        assertThat(car.problems())
                .extracting(Problem::path)
                .containsExactlyInAnyOrder(
                        "pedal.ratio",
                        "front.effective_radius",
                        "car.load_cases[0].cg_height",
                        "apply.balance_bar.offset",
                        "apply.rear_master.lost_stroke",
                        "lines.rear.tube_wall");
    }
}
