package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.analysis.resolve.Refused.assertOnly;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.model.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shoes that cannot stand in their drum, and parking brakes that do not fit the wheel, are refused by name, all at once. */
class ShoesRefusedTest {
    private static final WrittenCar SERVO = Cars.TANDEM.without("rear").with("""
            rear.kind: drum
            rear.shoes: self_energising
            rear.drum_radius: 140 mm
            rear.wheel_cylinder: 22 mm
            rear.shoe_geometry.pivot_distance: 112 mm
            rear.shoe_geometry.actuation_arm: 207 mm
            rear.shoe_geometry.anchor_distance: 118 mm
            rear.shoe_geometry.lining_start: 25 deg
            rear.shoe_geometry.lining_end: 125 deg
            """);

    private static final WrittenCar PLAIN =
            SERVO.without("rear.shoe_geometry.anchor_distance").with("rear.shoes: leading_trailing");

    @Test
    void thePlainDrumsStand() {
        assertThat(SERVO.problems()).isEmpty();
        assertThat(PLAIN.problems()).isEmpty();
        assertThat(SERVO.ledger())
                .extracting("path")
                .contains(
                        "rear.lining_friction",
                        "rear.shoe_geometry.other_lining_start",
                        "rear.shoe_geometry.other_lining_end")
                .doesNotContain("rear.brake_factor");
    }

    @Test
    void theFactorIsGivenOnce() {
        assertOnly(PLAIN.with("rear.brake_factor: 2.3"), "rear.brake_factor", "2.3");
        assertThat(PLAIN.with("rear.brake_factor: 2.3").problems().getFirst().allowed())
                .contains("brake_factor")
                .contains("shoe_geometry");
    }

    @ParameterizedTest
    @CsvSource({
        "pivot_distance, 140 mm",
        "lining_start, 125 deg",
        "other_lining_start, 125 deg",
        "actuation_arm, 260 mm",
        "anchor_distance, 118 mm"
    })
    void pinnedShoes(String key, String value) {
        assertOnly(PLAIN.with("rear.shoe_geometry." + key + ": " + value), "rear.shoe_geometry." + key, value);
    }

    @ParameterizedTest
    @CsvSource({"actuation_arm, 112 mm", "actuation_arm, 231 mm", "anchor_distance, 140 mm"})
    void selfEnergisingShoes(String key, String value) {
        assertOnly(SERVO.with("rear.shoe_geometry." + key + ": " + value), "rear.shoe_geometry." + key, value);
    }

    @Test
    void anAnchorIsNeeded() {
        assertOnly(SERVO.without("rear.shoe_geometry.anchor_distance"), "rear.shoe_geometry.anchor_distance", "");
    }

    @Test
    void twoLeadingShoesAreAlike() {
        assertOnly(
                PLAIN.with("rear.shoes: two_leading\nrear.shoe_geometry.other_lining_end: 120 deg"),
                "rear.shoe_geometry.other_lining_end",
                "120 deg");
    }

    @Test
    void allFaultsComeTogether() {
        WrittenCar car = PLAIN.with("rear.shoe_geometry.pivot_distance: 150 mm")
                .with("rear.shoe_geometry.lining_start: 130 deg\nrear.brake_factor: 2");
        assertThat(car.problems())
                .extracting(Problem::path)
                .contains("rear.brake_factor", "rear.shoe_geometry.pivot_distance", "rear.shoe_geometry.lining_start");
    }

    private static WrittenCar parked(WrittenCar car, String kind, String ratio) {
        return car.with("parking.control: hand\nparking.lever_ratio: 6\nparking.axle: rear")
                .with("parking.acts_on.kind: " + kind + "\nparking.acts_on." + ratio);
    }

    @Test
    void theParkingBrakeFitsTheWheel() {
        assertOnly(
                parked(Cars.TANDEM, "service_shoes", "shoe_lever_ratio: 3"), "parking.acts_on.kind", "service_shoes");
        assertOnly(parked(PLAIN, "caliper_lever", "pad_force_ratio: 9"), "parking.acts_on.kind", "caliper_lever");
        WrittenCar own = parked(PLAIN, "drum_in_disc", "shoe_lever_ratio: 3");
        assertOnly(
                own.with("parking.acts_on.shoes: two_leading\nparking.acts_on.drum_radius: 80 mm"),
                "parking.acts_on.kind",
                "drum_in_disc");
    }

    @Test
    void theReverseFactorIsGivenOnce() {
        WrittenCar car = parked(PLAIN, "service_shoes", "shoe_lever_ratio: 3");
        assertOnly(car.with("parking.acts_on.reverse_factor: 2.2"), "parking.acts_on.reverse_factor", "2.2");
    }
}
