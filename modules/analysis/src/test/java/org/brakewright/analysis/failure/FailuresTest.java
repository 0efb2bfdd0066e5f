package org.brakewright.analysis.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.kernel.dynamics.Gravity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is left with one thing failed, closed form on the plain cars: 500 N at the pad become 2,000 N at the rod and 1,000 N
 * in each master of 20 mm; pistons of 50 mm make 6,250 N of that; two wheels, two faces, friction 0.4 and radii 120 and
 * 60 over 300 mm make 4,000 N at the front and 2,000 N at the rear. The car weighs 1,000 kg, half on each axle, height
 * 0.2 of the wheelbase. A tandem's chambers see the whole 2,000 N: twice all that.
 */
class FailuresTest {
    private static final double WEIGHT = 1000 * Gravity.STANDARD;
    private static final double MASTER_AREA = Math.PI / 4 * 0.02 * 0.02;

    /** A bar so free that a failed master reaches its end of 28 mm: 60 mm x tan 0.5 is 32.8 mm. */
    private static final WrittenCar FREE_BAR = Cars.TWIN.with("apply.balance_bar.tilt_limit: 0.5 rad");

    /** Rear calipers that open so far that the rear master takes 4 mm at 1,000 N: 2 wheels x A_p x give x p / A_m. */
    private static final WrittenCar SOFT_REAR = FREE_BAR.with("rear.caliper_spread", 4e-3 * MASTER_AREA / (2 * 6250));

    private static Failure failure(WrittenCar car, What what) {
        return car.analysis().failures().stream()
                .filter(each -> each.what() == what)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withTheFrontLostTheRearBrakesWithItsShareOfThePush() {
        Failure failure = failure(Cars.TWIN, What.FRONT_CIRCUIT);
        assertThat(failure.pedalForceN()).isEqualTo(500);
        assertThat(failure.livePressurePa()).isCloseTo(1000 / MASTER_AREA, withinPercentage(1e-9));
        assertThat(failure.decelerationG()).isCloseTo(2000 / WEIGHT, within(1e-12));
        assertThat(failure.gripLimited()).isFalse();
        assertThat(failure.reachesStop()).isFalse();
    }

    @Test
    void withTheRearLostTheFrontBrakesWithItsShareOfThePush() {
        Failure failure = failure(Cars.TWIN, What.REAR_CIRCUIT);
        assertThat(failure.decelerationG()).isCloseTo(4000 / WEIGHT, within(1e-12));
        assertThat(failure.livePressurePa()).isCloseTo(1000 / MASTER_AREA, withinPercentage(1e-9));
    }

    /** One rod runs 60 mm x tan 0.2 ahead, the bearing half of that, the pad five times the bearing. */
    @Test
    void aStiffBarBindsAtItsTiltLimit() {
        Failure failure = failure(Cars.TWIN, What.FRONT_CIRCUIT);
        assertThat(failure.bar()).isEqualTo(BarEnd.BINDS_AT_TILT_LIMIT);
        assertThat(failure.pedalTravelM()).isCloseTo(5 * 0.5 * 0.06 * Math.tan(0.2), within(1e-12));
        assertThat(failure.pedalFallM()).isCloseTo(failure.pedalTravelM(), within(1e-12));
    }

    @Test
    void aFreeBarLeansOnTheMasterAtItsEnd() {
        Failure failure = failure(FREE_BAR, What.REAR_CIRCUIT);
        assertThat(failure.bar()).isEqualTo(BarEnd.LEANS_ON_BOTTOMED_MASTER);
        assertThat(failure.pedalTravelM()).isCloseTo(5 * 0.5 * 28e-3, within(1e-12));
    }

    @Test
    void theFallIsWhatThePedalGoesFurther() {
        Failure failure = failure(SOFT_REAR, What.FRONT_CIRCUIT);
        assertThat(failure.pedalTravelM()).isCloseTo(5 * 0.5 * 32e-3, within(1e-12));
        assertThat(failure.pedalFallM()).isCloseTo(5 * 0.5 * 28e-3, within(1e-12));
    }

    /** 75 mm at the pad leave the live master 2 of its 4 mm: half the push. */
    @Test
    void thePushEndsWhereThePedalMeetsItsStop() {
        Failure failure = failure(SOFT_REAR.with("pedal.travel_to_stop: 75 mm"), What.FRONT_CIRCUIT);
        assertThat(failure.reachesStop()).isTrue();
        assertThat(failure.pedalTravelM()).isCloseTo(75e-3, within(1e-9));
        assertThat(failure.livePressurePa()).isCloseTo(500 / MASTER_AREA, withinPercentage(1e-6));
        assertThat(failure.decelerationG()).isCloseTo(1000 / WEIGHT, within(1e-9));
    }

    /** A live master of 3 mm is at its end at three quarters of the push that takes 4 mm. */
    @Test
    void thePushEndsWhereTheLiveMasterIsUsedUp() {
        Failure failure = failure(SOFT_REAR.with("apply.rear_master.stroke: 3 mm"), What.FRONT_CIRCUIT);
        assertThat(failure.reachesStop()).isTrue();
        assertThat(failure.livePressurePa()).isCloseTo(750 / MASTER_AREA, withinPercentage(1e-6));
    }

    @Test
    void aPedalThatFallsToItsStopAtOnceLeavesNothing() {
        Failure failure = failure(FREE_BAR.with("pedal.travel_to_stop: 50 mm"), What.FRONT_CIRCUIT);
        assertThat(failure.reachesStop()).isTrue();
        assertThat(failure.decelerationG()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"primary, 18, 14", "secondary, 14, 18"})
    void aTandemsFailedChamberRunsToItsEnd(String feedsFront, double frontLost, double rearLost) {
        WrittenCar car = Cars.TANDEM.with("apply.front_fed_by: " + feedsFront);
        assertThat(failure(car, What.FRONT_CIRCUIT).pedalTravelM()).isCloseTo(5 * frontLost / 1000, within(1e-12));
        assertThat(failure(car, What.REAR_CIRCUIT).pedalTravelM()).isCloseTo(5 * rearLost / 1000, within(1e-12));
        assertThat(failure(car, What.REAR_CIRCUIT).bar()).isEqualTo(BarEnd.NONE);
        assertThat(failure(car, What.REAR_CIRCUIT).livePressurePa())
                .isCloseTo(2000 / MASTER_AREA, withinPercentage(1e-9));
    }

    /** Lever of 3 instead of 5: 1,200 N in the master without help, so 7,200 N at the tyres. */
    @Test
    void aDeadBoosterLeavesTheFootAlone() {
        Failure failure = failure(Cars.TANDEM.with(Cars.BOOSTER).with("pedal.ratio: 3"), What.BOOSTER);
        assertThat(failure.livePressurePa()).isCloseTo(1200 / MASTER_AREA, withinPercentage(1e-9));
        assertThat(failure.decelerationG()).isCloseTo(7200 / WEIGHT, within(1e-12));
        assertThat(failure.reachesStop()).isFalse();
    }

    /**
     * Calipers that take 36 mm of the chambers' 36 mm at 2,000 N, 18 mm each: a pedal of 90 mm is at its stop at half the
     * push, and only what half the push gives may be told.
     */
    @Test
    void aDeadBoosterIsJudgedByWhatThePedalReaches() {
        double give = 18e-3 * MASTER_AREA / (2 * 12_500);
        Failure failure = failure(
                Cars.TANDEM
                        .with(Cars.BOOSTER)
                        .with("apply.secondary_stroke: 18 mm\npedal.travel_to_stop: 90 mm")
                        .with("front.caliper_spread", give)
                        .with("rear.caliper_spread", give),
                What.BOOSTER);
        assertThat(failure.reachesStop()).isTrue();
        assertThat(failure.pedalTravelM()).isCloseTo(90e-3, within(1e-9));
        assertThat(failure.decelerationG()).isCloseTo(6000 / WEIGHT, within(1e-9));
    }

    @Test
    void onlyABoosterCanDie() {
        assertThat(Cars.TWIN.analysis().failures())
                .extracting(Failure::what)
                .containsExactly(What.FRONT_CIRCUIT, What.REAR_CIRCUIT);
        assertThat(Cars.TANDEM.analysis().failures()).hasSize(2);
        assertThat(Cars.TANDEM.with(Cars.BOOSTER).analysis().failures()).hasSize(3);
    }

    /** With a second load case of 1,250 kg the same force slows less. */
    @Test
    void theLeastOfAllLoadCasesIsTold() {
        Failure failure = failure(Cars.TWIN.with("""
                car.load_cases[1].name: loaded
                car.load_cases[1].front_axle: 600 kg
                car.load_cases[1].rear_axle: 650 kg
                car.load_cases[1].cg_height: 480 mm
                """), What.REAR_CIRCUIT);
        assertThat(failure.loadCase()).isEqualTo("loaded");
        assertThat(failure.decelerationG()).isCloseTo(4000 / (1250 * Gravity.STANDARD), within(1e-12));
    }

    /**
     * Row A3, VERIFIED: T. Bevan, The Theory of Machines, ch. 8, example 6. 30 mph; strong brakes on a slippery road, so the
     * grip sets the stop of rear only, front only and all wheels. Stops in ft as recomputed, and as printed.
     */
    @ParameterizedTest
    @CsvSource({"0.1, 530.189, 530, 698.947, 699, 300.622, 301", "0.6, 97.4746, 97.5, 103.965, 104, 50.1037, 50.1"})
    void gripSetsWhatOneAxleCanDo(
            double grip,
            double rearOnly,
            double rearPrinted,
            double frontOnly,
            double frontPrinted,
            double all,
            double allPrinted) {
        WrittenCar car = Cars.TANDEM.with(Cars.BOOSTER).with("""
                car.wheelbase: 9.5 ft
                car.load_cases[0].front_axle: 400 kg
                car.load_cases[0].rear_axle: 550 kg
                car.load_cases[0].cg_height: 2 ft
                """).with("car.grip", grip);
        assertStop(failure(car, What.FRONT_CIRCUIT), rearOnly, rearPrinted);
        assertStop(failure(car, What.REAR_CIRCUIT), frontOnly, frontPrinted);
        assertStop(failure(car, What.BOOSTER), all, allPrinted);
    }

    private static void assertStop(Failure failure, double recomputed, double printed) {
        assertThat(failure.gripLimited()).isTrue();
        double speed = 30 * 1.46667;
        double feet = speed * speed / (2 * 32.2 * failure.decelerationG());
        assertThat(feet).isCloseTo(recomputed, withinPercentage(5e-4));
        assertThat(feet).isCloseTo(printed, withinPercentage(0.2)); // three digits printed
    }
}
