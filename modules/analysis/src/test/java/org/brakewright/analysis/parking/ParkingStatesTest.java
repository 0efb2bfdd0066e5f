package org.brakewright.analysis.parking;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.StandingOnGrade;
import org.brakewright.model.resolved.ResolvedBuild;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The parked car: 1000 kg, half behind, height a fifth of the wheelbase, tyres of 300 mm, grip 0.9; closed forms by hand. */
class ParkingStatesTest {
    private static final WrittenCar LEVER = Cars.TANDEM.with("""
            parking.control: hand
            parking.driver_force: 200 N
            parking.lever_ratio: 6
            parking.cable_efficiency: 0.8
            parking.axle: rear
            parking.acts_on.kind: caliper_lever
            parking.acts_on.pad_force_ratio: 15
            parking.acts_on.pad_friction: 0.25
            """);

    private static ParkingState state(WrittenCar car) {
        return requireNonNull(car.analysis().parking());
    }

    /** 200 x 6 x 0.8 / 2 = 480 N of cable, 7200 N on each pad, 2 x 0.25 x 7200 x 60 mm = 216 N m, 1440 N at the road. */
    @Test
    void goesFromTheHandToTheRoad() {
        ParkingState state = state(LEVER);
        assertThat(state.cablePullN()).isCloseTo(480, within(1e-9));
        assertThat(state.applyForceN()).isCloseTo(7200, within(1e-9));
        assertThat(state.noseUp().torqueNM()).isCloseTo(216, within(1e-9));
        assertThat(state.noseDown().brakeForceN()).isCloseTo(1440, within(1e-9));
        ParkedCase parked = state.loadCases().getFirst();
        double held = 1440 / 9806.65;
        assertThat(parked.noseUp().grade()).isCloseTo(held / Math.sqrt(1 - held * held), within(1e-9));
        assertThat(parked.decelerationG()).isCloseTo(held, within(1e-9));
        double sine = 0.2 / Math.sqrt(1.04);
        assertThat(parked.forceFor(0.20).larger()).isCloseTo(200 * 9806.65 * sine / 1440, within(1e-6));
    }

    /** Where tyres limit, the axle needs just the grip there is; where the brake does, just its force. */
    @ParameterizedTest
    @CsvSource({"rear, 200", "rear, 1000", "front, 150", "front, 1000"})
    void standsAtTheLimitOnTheGradeHeld(String axle, double force) {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 50; i++) {
            WrittenCar car = LEVER.with("parking.axle: " + axle + "\nparking.driver_force: " + force + " N")
                    .with("car.load_cases[0].front_axle", random.nextDouble(300, 700))
                    .with("car.load_cases[0].rear_axle", random.nextDouble(300, 700))
                    .with("car.grip", random.nextDouble(0.3, 1.0));
            ResolvedBuild build = car.resolved();
            AxleLoads loads = Loads.of(build.car(), build.car().heaviest());
            ParkingState state = state(car);
            ParkedCase parked = state.loadCases().getFirst();
            boolean rear = axle.equals("rear");
            double grip = build.car().grip();
            stands(
                    new StandingOnGrade(loads, Math.atan(parked.noseUp().grade())),
                    parked.noseUp(),
                    state.noseUp(),
                    rear,
                    grip);
            stands(
                    new StandingOnGrade(loads, -Math.atan(parked.noseDown().grade())),
                    parked.noseDown(),
                    state.noseDown(),
                    rear,
                    grip);
        }
    }

    private static void stands(StandingOnGrade slope, GradeHeld held, ParkedWay way, boolean rear, double grip) {
        double needed = rear ? slope.rearGripNeeded() : slope.frontGripNeeded();
        if (held.gripLimited()) {
            assertThat(needed).isCloseTo(grip, withinPercentage(1e-6));
            assertThat(slope.forceNeeded()).isLessThanOrEqualTo(way.brakeForceN() * (1 + 1e-9));
        } else {
            assertThat(slope.forceNeeded()).isCloseTo(way.brakeForceN(), withinPercentage(1e-6));
            assertThat(needed).isLessThanOrEqualTo(grip * (1 + 1e-9));
        }
    }

    /** Row C1 of the check values as two leading shoes: 2 x 0.841284 forward, 2 x 0.437517 backward. */
    @Test
    void twoLeadingShoesHoldLessNoseUp() {
        WrittenCar car = LEVER.without("rear").without("parking.acts_on").with("""
                rear.kind: drum
                rear.shoes: two_leading
                rear.drum_radius: 150 mm
                rear.wheel_cylinder: 22 mm
                rear.lining_friction: 0.28
                rear.shoe_geometry.pivot_distance: 125 mm
                rear.shoe_geometry.actuation_arm: 216.50635 mm
                rear.shoe_geometry.lining_start: 0 deg
                rear.shoe_geometry.lining_end: 120 deg
                parking.acts_on.kind: service_shoes
                parking.acts_on.shoe_lever_ratio: 1.5
                """);
        ParkingState state = state(car);
        assertThat(state.noseDown().torqueNM()).isCloseTo(720 * 0.150 * 2 * 0.841284, within(1e-2));
        assertThat(state.noseUp().torqueNM()).isCloseTo(720 * 0.150 * 2 * 0.437517, within(1e-2));
    }

    /** A drum in the disc of its own, by a factor: alike both ways unless said otherwise. */
    @Test
    void aDrumInTheDiscHasItsOwnRadius() {
        WrittenCar car = LEVER.without("parking.acts_on").with("""
                parking.acts_on.kind: drum_in_disc
                parking.acts_on.shoes: leading_trailing
                parking.acts_on.drum_radius: 80 mm
                parking.acts_on.shoe_lever_ratio: 4
                parking.acts_on.brake_factor: 2.0
                """);
        assertThat(state(car).noseUp().torqueNM()).isCloseTo(480 * 4 * 2.0 * 0.080, within(1e-9));
        assertThat(state(car.with("parking.acts_on.reverse_factor: 1.5"))
                        .noseUp()
                        .torqueNM())
                .isCloseTo(480 * 4 * 1.5 * 0.080, within(1e-9));
    }

    /** 400 N by hand and 500 N by foot, UN R13-H Annex 3 and FMVSS 135 S7.12, from memory; openly assumed. */
    @ParameterizedTest
    @CsvSource({"hand, 400", "foot, 500"})
    void assumesTheForceThatRulesAllow(String control, double force) {
        WrittenCar car = LEVER.without("parking.driver_force").with("parking.control: " + control);
        assertThat(state(car).driverForceN()).isEqualTo(force);
        assertThat(car.ledger()).extracting("path").contains("parking.driver_force");
    }

    @Test
    void noneIsNotANumber() {
        assertThat(Cars.TANDEM.analysis().parking()).isNull();
    }
}
