package org.brakewright.analysis.clutch;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.clutch.ClutchState.Loss;
import org.brakewright.analysis.clutch.PlateState.CurvePoint;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.analysis.ledger.Ledger;
import org.brakewright.analysis.ledger.LedgerEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The clutch, against the check values and closed forms. */
class ClutchStatesTest {
    private static ClutchState state(WrittenCar car) {
        return requireNonNull(car.analysis().clutch());
    }

    @Test
    void aCarWithoutOneHasNone() {
        assertThat(Cars.TANDEM.analysis().clutch()).isNull();
    }

    /**
     * Row E6: 3 % of the volume is lost, here as 100.2612 cc of a fluid of 1 GPa at 20.8 bar. What a stiffness of 100 kN/mm
     * still gives is 15 um at the fork and 2 um at the pad.
     */
    @Test
    void externalSlaveAndFork() {
        PlateState plate = state(Clutches.FORK.with("clutch.line.trapped_volume: 100.2612 cc"))
                .newPlate();
        CurvePoint end = plate.curve().getLast();
        assertThat(end.padTravelM()).isCloseTo(0.140, within(1e-9));
        assertThat(end.bearingTravelM()).isCloseTo(8.67751e-3, within(1.6e-5));
        assertThat(plate.bearingTravelM()).isEqualTo(end.bearingTravelM());
        assertThat(end.pressurePa()).isCloseTo(2.07783e6, within(10.0));
        assertThat(end.effortN()).isCloseTo(113.345, within(1e-3));
        assertThat(plate.mostEffortN()).isCloseTo(113.345, within(1e-3));
        assertThat(state(Clutches.FORK).travelRatio()).isCloseTo(14.979, within(5e-4));
    }

    /** Scenario D9 of the needs: the master's stroke is all there is before a pedal that goes further. */
    @ParameterizedTest
    @CsvSource({
        "3/4 in, 1.0 in, 6.8, true",
        "1 in, 1.2 in, 14.4, true",
        "7/8 in, 1.12 in, 10.3, true",
        "3/4 in, 2.0 in, 6.8, false"
    })
    void concentricSlave(String bore, String stroke, double travel, boolean ends) {
        WrittenCar car = Clutches.RING.with("clutch.master.bore: " + bore + "\nclutch.master.stroke: " + stroke);
        WrittenCar stopped = ends
                ? car.with("clutch.pedal.travel_to_stop: 300 mm")
                : car.with("clutch.pedal.travel_to_stop: 145.7 mm");
        ClutchState clutch = state(stopped);
        assertThat(clutch.masterEnds()).isEqualTo(ends);
        assertThat(clutch.newPlate().bearingTravelM() * 1e3).isCloseTo(travel, within(0.05));
    }

    /** A rigid release without friction or springs gives out all the work that is put in, with a turning lever too. */
    @ParameterizedTest
    @CsvSource({"false", "true"})
    void workInIsWorkOut(boolean mechanism) {
        WrittenCar car = Clutches.SPRUNG.with("clutch.pedal.efficiency: 1\nclutch.release_efficiency: 1");
        List<CurvePoint> curve =
                state(mechanism ? withMechanism(car) : car).newPlate().curve();
        double in = 0;
        double out = 0;
        for (int i = 1; i < curve.size(); i++) {
            CurvePoint from = curve.get(i - 1);
            CurvePoint to = curve.get(i);
            double ring = Math.PI / 4 * (0.0508 * 0.0508 - 0.034925 * 0.034925);
            in += (from.effortN() + to.effortN()) / 2 * (to.padTravelM() - from.padTravelM());
            out += ring * (from.pressurePa() + to.pressurePa()) / 2 * (to.bearingTravelM() - from.bearingTravelM());
        }
        assertThat(in).isCloseTo(out, withinPercentage(mechanism ? 0.1 : 0.01));
        assertThat(out).isGreaterThan(5);
    }

    private static WrittenCar withMechanism(WrittenCar car) {
        return car.without("clutch.pedal.ratio").with("""
                clutch.pedal.mechanism.mount: hung
                clutch.pedal.mechanism.pad_forward: -40 mm
                clutch.pedal.mechanism.pad_up: -260 mm
                clutch.pedal.mechanism.pin_forward: 0 mm
                clutch.pedal.mechanism.pin_up: -50 mm
                clutch.pedal.mechanism.socket_forward: 110 mm
                clutch.pedal.mechanism.socket_up: -55 mm
                clutch.pedal.mechanism.axis_rise: 0 deg
                """);
    }

    /** The law's page: 3.3077, 4194 N clamped and 4378 N at 1.2 mm of wear; fingers rise by their ratio. */
    @Test
    void wearBringsTheSpringBackAndTheFingersUp() {
        ClutchState clutch = state(Clutches.SPRUNG.with("clutch.plate.wear: 1.2 mm"));
        assertThat(clutch.fingerRatio()).isCloseTo(64.5 / 19.5, within(1e-12));
        assertThat(clutch.newPlate().clampForceN()).isCloseTo(4194.25, within(0.01));
        assertThat(clutch.wornPlate().clampForceN()).isCloseTo(4377.77, within(0.01));
        assertThat(clutch.fingerRiseM()).isCloseTo(1.2e-3 * 64.5 / 19.5, within(1e-12));
        assertThat(clutch.wearRoomM()).isCloseTo(0.0254 - 0.0154 - clutch.fingerRiseM(), within(1e-12));
        assertThat(clutch.wornPlate().extensionLeftM() - clutch.newPlate().extensionLeftM())
                .isCloseTo(
                        clutch.fingerRiseM()
                                - clutch.wornPlate().bearingTravelM()
                                + clutch.newPlate().bearingTravelM(),
                        within(1e-9));
        assertThat(clutch.heaviest()).isSameAs(clutch.wornPlate());
    }

    /** A bearing that stands off first closes its gap, and wear eats the gap: 3.2 mm less 4 x 0.5 mm. */
    @Test
    void aGapIsTravelLost() {
        WrittenCar gap = Clutches.RING
                .without("clutch.bearing")
                .with("clutch.bearing.kind: clearance\nclutch.bearing.gap: 3.2 mm\nclutch.plate.wear: 0.5 mm");
        ClutchState clutch = state(gap);
        ClutchState contact = state(Clutches.RING);
        assertThat(clutch.newPlate().gapM()).isEqualTo(3.2e-3);
        assertThat(clutch.wornPlate().gapM()).isCloseTo(1.2e-3, within(1e-12));
        assertThat(clutch.wearRoomM()).isCloseTo(1.2e-3, within(1e-12));
        assertThat(clutch.newPlate().bearingTravelM())
                .isCloseTo(contact.newPlate().bearingTravelM() - 3.2e-3, within(1e-7));
        assertThat(clutch.leastFree()).isSameAs(clutch.newPlate());
        assertThat(clutch.furthest()).isSameAs(clutch.wornPlate());
        assertThat(state(gap.with("clutch.plate.wear: 1 mm")).wearRoomM()).isCloseTo(-0.8e-3, within(1e-12));
    }

    /** Soft line, slack, springs and a pedal that gives: every share is told, and together they are the whole. */
    @Test
    void lossesAddUpToTheTravelThatFrees() {
        WrittenCar soft = withMechanism(Clutches.FORK.with("""
                clutch.pedal.slack: 0.3 mm
                clutch.pedal.mount_stiffness: 200 N/mm
                clutch.pedal.arm_stiffness: 900 N/mm
                clutch.master.lost_stroke: 1.2 mm
                clutch.master.spring_force: 25 N
                clutch.line.tube_length: 1.5 m
                clutch.line.hose_length: 0.5 m
                clutch.line.hose_expansion: 2 cc/m
                clutch.line.trapped_volume: 15 cc
                clutch.slave.fork_stiffness: 2000 N/mm
                fluid.free_air: 0.002
                """));
        ClutchState clutch = state(soft);
        assertThat(clutch.losses()).hasSize(LossCause.values().length).allMatch(loss -> loss.padTravelM() >= 0);
        assertThat(clutch.losses().stream().mapToDouble(Loss::padTravelM).sum())
                .isCloseTo(clutch.newPlate().freePadM(), within(1e-12));
        assertThat(clutch.losses())
                .filteredOn(loss -> loss.cause() == LossCause.MOUNT)
                .singleElement()
                .satisfies(mount -> assertThat(mount.padTravelM())
                        .isCloseTo(clutch.newPlate().effortAtFreeN() / 200e3, within(1e-12)));
    }

    /** Where the pedal's stop belongs, by hand: rigid, so pad = 6 mm + 14.979 x bearing travel, but for 15 um at the fork. */
    @Test
    void stopStandsBetweenFreeAndStrained() {
        ClutchState clutch = state(Clutches.FORK);
        double ratio = clutch.travelRatio();
        assertThat(clutch.stop().leastM()).isCloseTo(0.006 + ratio * 8e-3, within(3e-4));
        assertThat(clutch.stop().mostM()).isCloseTo(0.006 + ratio * 11e-3, within(3e-4));
        assertThat(clutch.stop().bestM()).isCloseTo(0.006 + ratio * 9e-3, within(3e-4));
        ClutchState tight = state(Clutches.FORK.with("clutch.cover.most_bearing_travel: 8.5 mm"));
        assertThat(tight.stop().bestM()).isCloseTo(0.006 + ratio * 8.25e-3, within(3e-4));
        assertThat(state(Clutches.FORK.with("clutch.bearing.preload: 7 mm"))
                        .stop()
                        .bestM())
                .isNull();
    }

    /** Row E1 of the check values clamps 15 708 N for 235.62 N m a face. */
    @Test
    void carriesWhatItsClampGives() {
        ClutchState clutch = state(Clutches.FORK.with("clutch.cover.clamp_load: 15.70796 kN"));
        assertThat(clutch.newPlate().clampForceN()).isCloseTo(15707.96, within(0.01));
        assertThat(clutch.torque().uniformWearNM()).isCloseTo(2 * 235.61945, within(1e-3));
        assertThat(clutch.torque().greatestPressurePa()).isCloseTo(1e6, within(10.0));
        assertThat(clutch.torque().reserve()).isCloseTo(2 * 235.61945 / 300, within(1e-5));
        assertThat(clutch.torque().uniformPressureNM())
                .isGreaterThan(clutch.torque().uniformWearNM());
        assertThat(clutch.clampImpliedN()).isCloseTo(6000, within(1e-6));
        assertThat(state(Clutches.FORK).torque().uniformWearNM()).isCloseTo(2 * 0.2 * 6000 * 0.075, within(1e-6));
    }

    /** Off a press: clamp force is gone where i F reaches it, or at the peak when it is not given. */
    @Test
    void followsMeasuredPoints() {
        WrittenCar points = Clutches.FORK
                .without("clutch.cover.release_load")
                .without("clutch.cover.release_travel")
                .with("""
                        clutch.cover.diaphragm.kind: release_points
                        clutch.cover.diaphragm.points[0].travel: 2 mm
                        clutch.cover.diaphragm.points[0].force: 800 N
                        clutch.cover.diaphragm.points[1].travel: 4 mm
                        clutch.cover.diaphragm.points[1].force: 1500 N
                        clutch.cover.diaphragm.points[2].travel: 8 mm
                        clutch.cover.diaphragm.points[2].force: 1300 N
                        """);
        PlateState peak = state(points).newPlate();
        assertThat(peak.neededM()).isCloseTo(4e-3 + 4 * 0.5e-3, within(1e-12));
        assertThat(peak.clampForceN()).isCloseTo(6000, within(1e-9));
        assertThat(peak.beyondData()).isTrue();
        PlateState given = state(points.with("clutch.cover.clamp_load: 3200 N")).newPlate();
        assertThat(given.neededM()).isCloseTo(2e-3 + 4 * 0.5e-3, within(1e-9));
        assertThat(given.clampForceN()).isEqualTo(3200);
        assertThat(given.curve().getFirst().clampForceN()).isEqualTo(3200);
        assertThat(given.curve().getLast().clampForceN()).isZero();
        assertThat(state(points.with("clutch.pedal.travel_to_stop: 110 mm"))
                        .newPlate()
                        .beyondData())
                .isFalse();
    }

    /** A spring that pushes 12 N/mm, as on the law's page: 15 deg beyond its dead centre it gives 7.0018 N m. */
    @Test
    void anOverCentreSpringHelpsBeyondItsDeadCentre() {
        double beyond = 0.250 * Math.toRadians(15);
        WrittenCar helped = Clutches.FORK.with("""
                clutch.pedal_spring.kind: over_centre
                clutch.pedal_spring.action: pushes
                clutch.pedal_spring.spring_rate: 12 N/mm
                clutch.pedal_spring.free_length: 95 mm
                clutch.pedal_spring.pin_radius: 60 mm
                clutch.pedal_spring.anchor_radius: 130 mm
                clutch.pedal_spring.pad_arm: 250 mm
                """).with("clutch.pedal_spring.dead_centre", 0.140 - beyond);
        PlateState with = state(helped).newPlate();
        PlateState without = state(Clutches.FORK).newPlate();
        double help =
                without.curve().getLast().effortN() - with.curve().getLast().effortN();
        assertThat(help).isCloseTo(7.00177 / 0.250, within(1e-3));
        assertThat(with.leastReturnN()).isPositive();
        assertThat(state(helped.with("clutch.pedal_spring.spring_rate: 60 N/mm"))
                        .newPlate()
                        .leastReturnN())
                .isNegative();
    }

    @Test
    void aReturnSpringAddsToTheEffort() {
        PlateState with = state(
                        Clutches.FORK.with(
                                "clutch.pedal_spring.kind: return_spring\nclutch.pedal_spring.force: 10 N\nclutch.pedal_spring.rate: 0.1 N/mm"))
                .newPlate();
        PlateState without = state(Clutches.FORK).newPlate();
        assertThat(with.mostEffortN()).isCloseTo(without.mostEffortN() + 10 + 14, within(1e-3));
        assertThat(with.leastReturnN()).isCloseTo(10.6, within(1e-9));
    }

    /** Each thing assumed of the clutch moves the clutch alone, and what it moves is told. */
    @Test
    void theLedgerTellsWhatAnAssumptionMoves() {
        WrittenCar car = Clutches.RING
                .without("clutch.plate.friction")
                .without("clutch.cover.release_load")
                .without("clutch.line");
        Headline nominal = Headline.of(car.analysis());
        List<LedgerEntry> ledger = Ledger.weigh(car.build(), car.resolved(), car.ledger(), nominal);
        LedgerEntry friction = entry(ledger, "clutch.plate.friction");
        assertThat(requireNonNull(friction.atHigh().clutch()).torqueNM())
                .isCloseTo(requireNonNull(friction.atLow().clutch()).torqueNM() * 0.35 / 0.22, within(1e-6));
        assertThat(friction.atHigh().effortN()).isEqualTo(nominal.effortN());
        assertThat(friction.weight()).isPositive();
        assertThat(entry(ledger, "clutch.cover.release_load").weight()).isPositive();
        LedgerEntry hose = entry(ledger, "clutch.line.hose_length");
        assertThat(requireNonNull(hose.atHigh().clutch()).spareM())
                .isLessThan(requireNonNull(hose.atLow().clutch()).spareM());
    }

    private static LedgerEntry entry(List<LedgerEntry> ledger, String path) {
        return ledger.stream()
                .filter(entry -> entry.assumption().path().equals(path))
                .findFirst()
                .orElseThrow();
    }
}
