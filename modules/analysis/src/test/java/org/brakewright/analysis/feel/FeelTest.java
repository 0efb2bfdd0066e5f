package org.brakewright.analysis.feel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.Rig;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.feel.FeelCurve.End;
import org.brakewright.analysis.hydraulics.Cause;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.pedal.TravelShare.Where;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.analysis.vehicle.HardStop;
import org.junit.jupiter.api.Test;

/** Firm, as assumed and soft, against closed forms of cars that give in one place only. */
class FeelTest {
    private static Feel feel(WrittenCar car) {
        Resolution.Resolved resolved = (Resolution.Resolved) Resolve.resolve(car.build());
        HardStop stop = Analyse.analyse(resolved.build()).hardStop();
        return Feels.of(
                car.build(), resolved, stop == null ? null : stop.point().pedalForceN());
    }

    private static double last(FeelCurve curve) {
        return curve.points().getLast().padTravelM();
    }

    private static double atHardStop(FeelCurve curve) {
        return Objects.requireNonNull(curve.travelAtHardStopM());
    }

    /**
     * Closed form. One piston of 50 mm a caliper, its area counted for both pads of both wheels, is 4 A c of fluid; a master
     * of 20 mm gives it; half of its stroke is the bar's, times the ratio of 5. From 0.1 to 0.3 mm: soft less firm is
     * 5 x 1/2 x 4 x (50/20)^2 x 0.2 mm = 12.5 mm.
     */
    @Test
    void oneClearanceMakesTheWholeDifference() {
        Feel feel = feel(Cars.TWIN.with("front.running_clearance: 0.2 ± 0.1 mm"));
        double difference = 5 * 0.5 * 4 * 2.5 * 2.5 * 0.2e-3;
        assertThat(atHardStop(feel.soft()) - atHardStop(feel.firm())).isCloseTo(difference, within(1e-12));
        assertThat(last(feel.soft()) - last(feel.firm())).isCloseTo(difference, within(1e-12));
        assertThat(feel.firmToSoft()).hasSize(1);
        TravelShare share = feel.firmToSoft().getFirst();
        assertThat(share.where()).isEqualTo(Where.FRONT);
        assertThat(share.cause()).isEqualTo(Cause.CLEARANCE);
        assertThat(share.padTravelM()).isCloseTo(difference, within(1e-12));
        // 4 pistons' areas times 0.2 mm
        assertThat(share.volumeM3()).isCloseTo(Math.PI * 0.05 * 0.05 * 0.2e-3, within(1e-15));
    }

    /** Hooke: 200 N/mm ± 100 gives F/300 to F/100 mm. */
    @Test
    void aStifferMountIsFirmer() {
        Feel feel = feel(Cars.TWIN.with("pedal.mount_stiffness: 200 ± 100 N/mm"));
        double force = Objects.requireNonNull(feel.hardStopForceN());
        assertThat(atHardStop(feel.firm())).isCloseTo(force / 3e5, within(1e-12));
        assertThat(atHardStop(feel.asAssumed())).isCloseTo(force / 2e5, within(1e-12));
        assertThat(atHardStop(feel.soft())).isCloseTo(force / 1e5, within(1e-12));
        assertThat(feel.firmToSoft()).extracting(TravelShare::cause).containsExactly(Cause.MOUNT);
    }

    @Test
    void whatGivesNoTravelIsLeftAlone() {
        Feel feel = feel(Cars.TWIN.with("front.pad_friction: 0.40 ± 0.04").with("pedal.ratio: 5.0 ± 0.2"));
        assertThat(feel.firm()).isEqualTo(feel.asAssumed()).isEqualTo(feel.soft());
        assertThat(feel.firmToSoft()).isEmpty();
    }

    /** The range is the larger of 1.3 times the hard stop's force and 500 N. */
    @Test
    void aCurveEndsAtTheRangeWhenNothingElseEndsIt() {
        Feel feel = feel(Cars.TWIN);
        double range = Math.max(500, 1.3 * Objects.requireNonNull(feel.hardStopForceN()));
        assertThat(feel.asAssumed().end()).isEqualTo(End.FORCE);
        assertThat(feel.asAssumed().points().getFirst().pedalForceN()).isZero();
        assertThat(feel.asAssumed().points().getLast().pedalForceN()).isCloseTo(range, within(1e-9 * range));
    }

    /** A mount of 2 N/mm lets the pad reach a stop at 100 mm under 200 N. */
    @Test
    void thePedalsStopEndsACurve() {
        FeelCurve curve = feel(Cars.TWIN.with("pedal.mount_stiffness", 2e3).with("pedal.travel_to_stop: 100 mm"))
                .asAssumed();
        assertThat(curve.end()).isEqualTo(End.PEDAL_STOP);
        assertThat(last(curve)).isCloseTo(0.1, within(1e-9));
        assertThat(curve.points().getLast().pedalForceN()).isCloseTo(200, within(1e-6));
    }

    /** Calipers that spread by 1 mm/MPa take 2 wheels x A x p x 1 mm/MPa; the master of 20 mm is at its 28 mm first. */
    @Test
    void theMasterThatBottomsEndsACurve() {
        String wide = ".caliper_spread: 1 mm/MPa";
        FeelCurve front = feel(Cars.TWIN.with("front" + wide).with("pedal.travel_to_stop: 300 mm"))
                .asAssumed();
        FeelCurve rear = feel(Cars.TWIN.with("rear" + wide).with("pedal.travel_to_stop: 300 mm"))
                .asAssumed();
        assertThat(front.end()).isEqualTo(End.FRONT_MASTER);
        assertThat(rear.end()).isEqualTo(End.REAR_MASTER);
        // p = 28 mm / (2 x 2.5^2 mm/MPa) = 2.24 MPa
        assertThat(front.points().getLast().frontPressurePa()).isCloseTo(2.24e6, within(1.0));
        assertThat(rear.points().getLast().rearStrokeM()).isCloseTo(28e-3, within(1e-10));
    }

    @Test
    void curvesRiseAndFirmIsNeverSofterForCarsAtRandom() {
        SplittableRandom random = new SplittableRandom(6);
        for (int number = 0; number < 60; number++) {
            WrittenCar car = random.nextBoolean() ? drawn(random, Cars.TWIN) : drawn(random, Cars.TANDEM);
            Feel feel = feel(car);
            for (FeelCurve curve : List.of(feel.firm(), feel.asAssumed(), feel.soft())) {
                assertThat(curve.points()).extracting(FeelPoint::pedalForceN).isSorted();
                assertThat(curve.points()).extracting(FeelPoint::padTravelM).isSorted();
                assertThat(curve.points()).hasSizeBetween(8, 60);
            }
            double between = feel.firmToSoft().stream()
                    .mapToDouble(TravelShare::padTravelM)
                    .sum();
            assertThat(between)
                    .as("car %d", number)
                    .isCloseTo(atHardStop(feel.soft()) - atHardStop(feel.firm()), within(1e-9));
            ordered(feel, car, number);
        }
    }

    /** At every force of the soft curve, found again on the car as assumed: firm, as assumed, soft. */
    private static void ordered(Feel feel, WrittenCar car, int number) {
        Rig rig = Rig.of(car);
        feel.soft().points().stream()
                .filter(point -> point.pedalForceN() > 1)
                .forEach(point -> assertThat(rig.push(point.pedalForceN()).padTravel())
                        .as("car %d, less than soft at %.1f N", number, point.pedalForceN())
                        .isLessThanOrEqualTo(point.padTravelM() + 1e-9));
        feel.firm().points().stream()
                .filter(point -> point.pedalForceN() > 1)
                .forEach(point -> assertThat(
                                rig.push(point.pedalForceN() * (1 + 1e-6)).padTravel())
                        .as("car %d, more than firm at %.1f N", number, point.pedalForceN())
                        .isGreaterThanOrEqualTo(point.padTravelM() - 1e-9));
    }

    /** What the ledger would fill is filled, and springs, clearances and calipers are drawn. */
    private static WrittenCar drawn(SplittableRandom random, WrittenCar base) {
        WrittenCar car = base.without("pedal.free_play")
                .without("pedal.slack")
                .without("fluid.free_air")
                .without("lines.front.hose_expansion")
                .with("lines.front.hose_length", random.nextDouble(0.1, 1))
                .with("lines.rear.trapped_volume", random.nextDouble(1e-5, 5e-5))
                .with("front.threshold_pressure", random.nextDouble(0, 1e5));
        for (String end : List.of("front", "rear")) {
            car = random.nextBoolean() ? car.without(end + ".running_clearance") : car;
            car = random.nextBoolean() ? car.without(end + ".pad_settling") : car;
            car = car.without(end + ".caliper_spread").without(end + ".pad_compression");
        }
        return base == Cars.TANDEM
                ? car.without("apply.spring_force").without("apply.spring_rate").without("apply.lost_stroke")
                : car.without("apply.front_master.spring_rate").without("apply.rear_master.lost_stroke");
    }
}
