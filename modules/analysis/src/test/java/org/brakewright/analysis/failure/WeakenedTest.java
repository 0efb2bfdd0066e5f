package org.brakewright.analysis.failure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.failure.Failure.BarEnd;
import org.brakewright.analysis.failure.Failure.What;
import org.brakewright.kernel.dynamics.Gravity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Air in one circuit, and hot brakes, closed form on the plain cars (their forces: see {@link FailuresTest}). A circuit of
 * 20 cm3 with a tenth of air holds 2 cm3 of it at atmosphere; Boyle's law takes 2 cm3 p/(p + p0) from the master.
 */
class WeakenedTest {
    private static final double WEIGHT = 1000 * Gravity.STANDARD;
    private static final double MASTER_AREA = Math.PI / 4 * 0.02 * 0.02;
    private static final double ATMOSPHERE = 101_325;
    private static final double AIR = 2e-6;
    private static final String FILLED = """
            lines.front.trapped_volume: 20 cc
            lines.rear.trapped_volume: 20 cc
            intent.air_in_one_circuit: 0.1
            """;
    private static final WrittenCar TWIN = Cars.TWIN.with(FILLED);
    private static final WrittenCar TANDEM = Cars.TANDEM.with(FILLED);

    private static Failure weakened(WrittenCar car, What what) {
        return car.analysis().weakened().stream()
                .filter(each -> each.what() == what)
                .findFirst()
                .orElseThrow();
    }

    /** Pressure (Pa) at which a master has gone a stroke (m) on 2 cm3 of air; the liquid takes a thousandth of that besides. */
    private static double pressureAt(double stroke) {
        double taken = stroke * MASTER_AREA / AIR;
        return ATMOSPHERE * taken / (1 - taken);
    }

    @ParameterizedTest
    @CsvSource({"AIR_IN_FRONT_CIRCUIT", "AIR_IN_REAR_CIRCUIT"})
    void aMasterThatDoesNotBottomLosesTravelAndNothingElse(What what) {
        Failure failure = weakened(TWIN, what);
        double pressure = 1000 / MASTER_AREA;
        double stroke = AIR * pressure / (pressure + ATMOSPHERE) / MASTER_AREA;
        assertThat(failure.pedalFallM()).isCloseTo(5 * 0.5 * stroke, withinPercentage(1e-6));
        assertThat(failure.decelerationG()).isCloseTo(6000 / WEIGHT, within(1e-9));
        assertThat(failure.shareOfWhole()).isCloseTo(1, within(1e-12));
        assertThat(failure.bottomed()).isFalse();
        assertThat(failure.bar()).isEqualTo(BarEnd.NONE);
        assertThat(failure.reachesStop()).isFalse();
    }

    /** A rear master of 3 mm keeps what 3 mm have squeezed, the front brakes with all of its 4,000 N. */
    @Test
    void aMasterThatBottomsKeepsThePressureThatItHasThen() {
        Failure failure = weakened(TWIN.with("apply.rear_master.stroke: 3 mm"), What.AIR_IN_REAR_CIRCUIT);
        double rear = 2000 * pressureAt(3e-3) * MASTER_AREA / 1000;
        assertThat(failure.bottomed()).isTrue();
        assertThat(failure.bar()).isEqualTo(BarEnd.LEANS_ON_BOTTOMED_MASTER);
        assertThat(failure.livePressurePa()).isCloseTo(1000 / MASTER_AREA, withinPercentage(1e-9));
        assertThat(failure.decelerationG()).isCloseTo((4000 + rear) / WEIGHT, within(3e-5));
        assertThat(failure.shareOfWhole()).isCloseTo((4000 + rear) / 6000, within(3e-5));
        assertThat(failure.pedalTravelM() - whole()).isCloseTo(5 * 0.5 * 3e-3, within(1e-6));
    }

    /** With no air the liquid of both circuits still gives 20 cm3 p/K each. */
    private static double whole() {
        return 5 * 0.5 * 20e-6 * (1000 / MASTER_AREA) / 2e9 / MASTER_AREA;
    }

    /** The rod may run 60 mm x tan 0.02 ahead of the other. */
    @Test
    void aBarThatBindsEndsTheStroke() {
        Failure failure = weakened(TWIN.with("apply.balance_bar.tilt_limit: 0.02 rad"), What.AIR_IN_FRONT_CIRCUIT);
        double run = 0.06 * Math.tan(0.02);
        double live = 20e-6 * (1000 / MASTER_AREA) / 2e9 / MASTER_AREA;
        assertThat(failure.bar()).isEqualTo(BarEnd.BINDS_AT_TILT_LIMIT);
        assertThat(failure.bottomed()).isFalse();
        assertThat(failure.decelerationG())
                .isCloseTo((2000 + 4000 * pressureAt(run + live) * MASTER_AREA / 1000) / WEIGHT, within(3e-5));
    }

    @Test
    void aChamberThatBottomsPassesThePushOn() {
        Failure failure = weakened(TANDEM.with("apply.secondary_stroke: 3 mm"), What.AIR_IN_REAR_CIRCUIT);
        assertThat(failure.bottomed()).isTrue();
        assertThat(failure.bar()).isEqualTo(BarEnd.NONE);
        double rear = 4000 * pressureAt(3e-3) * MASTER_AREA / 2000;
        assertThat(failure.decelerationG()).isCloseTo(Math.min(8000 + rear, lockedFront(rear)) / WEIGHT, within(3e-5));
    }

    /** Front at its grip of 0.9, N: z W = 0.9 (W/2 + 0.2 z W) + rear. */
    private static double lockedFront(double rear) {
        return (0.9 * WEIGHT / 2 + rear) / (1 - 0.9 * 0.2);
    }

    /** Each chamber holds one front and the rear wheel across: half of 12,000 N, and half of that as far as it is squeezed. */
    @Test
    void onADiagonalOneSideBrakes() {
        Failure failure = weakened(
                TANDEM.with("apply.split: diagonal\napply.primary_stroke: 3 mm\ncar.grip: 1.5"),
                What.AIR_IN_FIRST_DIAGONAL);
        assertThat(failure.bottomed()).isTrue();
        assertThat(failure.livePressurePa()).isCloseTo(2000 / MASTER_AREA, withinPercentage(1e-9));
        double soft = 6000 * pressureAt(3e-3) * MASTER_AREA / 2000;
        assertThat(failure.decelerationG()).isCloseTo((6000 + soft) / WEIGHT, within(3e-5));
    }

    /** Rear wheels that lock give their grip: z W = front + 0.2 (W/2 - 0.2 z W). */
    @Test
    void aLockedAxleGivesItsGripAndNoMore() {
        Failure failure =
                weakened(TWIN.with("apply.front_master.stroke: 3 mm\ncar.grip: 0.2"), What.AIR_IN_FRONT_CIRCUIT);
        double front = 4000 * pressureAt(3e-3) * MASTER_AREA / 1000;
        assertThat(failure.gripLimited()).isTrue();
        assertThat(failure.decelerationG())
                .isCloseTo((front + 0.2 * WEIGHT / 2) / (1 + 0.2 * 0.2) / WEIGHT, within(3e-5));
    }

    /** The pad has 20 mm, the air would take it further: only what it reaches counts. */
    @Test
    void aPedalOnItsStopEndsThePush() {
        Failure failure = weakened(TWIN.with("pedal.travel_to_stop: 10 mm"), What.AIR_IN_REAR_CIRCUIT);
        assertThat(failure.reachesStop()).isTrue();
        assertThat(failure.pedalTravelM()).isCloseTo(10e-3, within(1e-9));
        assertThat(failure.bottomed()).isFalse();
        assertThat(failure.decelerationG())
                .isCloseTo(6000 * pressureAt(4e-3) * MASTER_AREA / 1000 / WEIGHT, within(5e-4));
    }

    /**
     * The rear bottoms at 3 mm, and calipers that open take 4 mm of the front at 1,000 N: a pedal with 2.5 x 5 mm meets its
     * stop when the front has gone 2 mm, at half the push.
     */
    @Test
    void aPedalOnItsStopEndsThePushAfterTheSoftMasterHasBottomed() {
        Failure failure = weakened(
                TWIN.with(
                                "apply.rear_master.stroke: 3 mm\npedal.travel_to_stop: 12.5 mm\nlines.front.trapped_volume: 0 cc")
                        .with("front.caliper_spread", 4e-3 * MASTER_AREA / (2 * 6250)),
                What.AIR_IN_REAR_CIRCUIT);
        assertThat(failure.reachesStop()).isTrue();
        assertThat(failure.bottomed()).isTrue();
        assertThat(failure.pedalTravelM()).isCloseTo(12.5e-3, within(1e-9));
        assertThat(failure.livePressurePa()).isCloseTo(500 / MASTER_AREA, withinPercentage(1e-4));
    }

    /** Friction 0.3 in place of 0.4 leaves three quarters of 6,000 N; efforts go up by a third. */
    @Test
    void hotBrakesGiveLessForTheSamePush() {
        Failure fade = weakened(Cars.TWIN.with("intent.hard_stop: 0.7 g"), What.FADE);
        assertThat(fade.decelerationG()).isCloseTo(4500 / WEIGHT, within(1e-9));
        assertThat(fade.shareOfWhole()).isCloseTo(0.75, within(1e-12));
        assertThat(fade.pedalFallM()).isZero();
        assertEfforts(fade, List.of(4.82 * 500 / 4.5, 4.88 * 500 / 4.5, 0.7 * WEIGHT / 4500 * 500));
    }

    /** The front alone gives 8 N a newton and locks at 0.9 x 0.5/(1 - 0.18) g; the rear alone locks before half the weight. */
    @Test
    void effortsAreThosePushesOrNone() {
        List<Failure> failures = Cars.TWIN.analysis().failures();
        assertEfforts(failures.getLast(), List.of(2440.0 / 8, 2550.0 / 8, 0.5 * WEIGHT / 8));
        assertThat(failures.getFirst().effortFor().getFirst().pedalForceN()).isCloseTo(2440.0 / 4, within(1e-6));
        assertThat(failures.getFirst().effortFor().getLast().pedalForceN()).isNull();
    }

    private static void assertEfforts(Failure failure, List<Double> efforts) {
        assertThat(failure.effortFor()).hasSameSizeAs(efforts);
        for (int i = 0; i < efforts.size(); i++) {
            assertThat(failure.effortFor().get(i).pedalForceN()).isCloseTo(efforts.get(i), within(1e-6));
        }
    }

    /** Trials of many cars do without them. */
    @Test
    void judgingDoesWithout() {
        assertThat(Analyse.forJudging(TWIN.resolved()).weakened()).isEmpty();
        assertThat(TWIN.analysis().weakened()).hasSize(3);
    }

    @Test
    void theAirIsAssumedOpenly() {
        assertThat(Cars.TWIN.without("intent.air_in_one_circuit").ledger())
                .singleElement()
                .satisfies(assumed -> {
                    assertThat(assumed.path()).isEqualTo("intent.air_in_one_circuit");
                    assertThat(assumed.value()).isEqualTo(0.05);
                    assertThat(assumed.basis()).isNotBlank();
                });
    }
}
