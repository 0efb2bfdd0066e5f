package org.brakewright.analysis.tolerance;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.concurrent.atomic.AtomicInteger;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.tolerance.RearFirstOdds.AtGrip;
import org.brakewright.analysis.tolerance.Spread.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Spread against closed forms: cars in which one or two values decide, so that quantiles and odds can be worked out. */
class TolerancesTest {
    /** Quantiles of even points are good to about one sample in 4096. */
    private static final double CLOSE = 0.05;

    /** Effort is the nominal one times 5 over the ratio, so its quantiles are those of the ratio turned round. */
    @Test
    void effortOverThePedalRatioSpreadsAsItsReciprocal() {
        Spread effort = run(Cars.TWIN.with("pedal.ratio: 5 ± 0.5")).spread(Measure.EFFORT);
        double ratioTimesEffort = 5 * requireNonNull(effort.nominal());
        Spread.Quantiles band = requireNonNull(effort.band());
        assertThat(band.p05()).isCloseTo(ratioTimesEffort / 5.45, withinPercentage(CLOSE));
        assertThat(band.p25()).isCloseTo(ratioTimesEffort / 5.25, withinPercentage(CLOSE));
        assertThat(band.p50()).isCloseTo(ratioTimesEffort / 5.00, withinPercentage(CLOSE));
        assertThat(band.p75()).isCloseTo(ratioTimesEffort / 4.75, withinPercentage(CLOSE));
        assertThat(band.p95()).isCloseTo(ratioTimesEffort / 4.55, withinPercentage(CLOSE));
        assertThat(effort.owners()).extracting(Owner::path).containsExactly("pedal.ratio");
        assertThat(effort.together()).isLessThan(0.01);
    }

    /** Law of propagation (JCGM 100, 5.1.2): relative variances of a quotient add, here 0.01 squared and 0.03 squared. */
    @Test
    void sharesOfTheVarianceAreThoseOfTheDeltaMethod() {
        Spread effort = run(Cars.TWIN.with("""
                pedal.ratio: 5 ± 0.05
                pedal.efficiency: 0.8 ± 0.024
                """)).spread(Measure.EFFORT);
        assertThat(effort.owners()).extracting(Owner::path).containsExactly("pedal.efficiency", "pedal.ratio");
        assertThat(effort.owners().getFirst().share()).isCloseTo(0.9, within(0.01));
        assertThat(effort.owners().getLast().share()).isCloseTo(0.1, within(0.01));
        Spread.Quantiles band = requireNonNull(effort.band());
        double nominal = requireNonNull(effort.nominal());
        // The sum of a narrow and a wide rectangle, x = 0.01 a + 0.03 b: a trapezium whose 95 % point is
        // at 0.04 - root(2 x 0.05 x 4 x 0.01 x 0.03) = 0.04 - 0.010954.
        double side = 0.04 - Math.sqrt(2 * 0.05 * 4 * 0.01 * 0.03);
        assertThat(band.p95() / nominal - 1).isCloseTo(side, within(0.0015)); // second order: 0.03 squared
        assertThat(1 - band.p05() / nominal).isCloseTo(side, within(0.0015));
    }

    /**
     * Fixed split: the rear locks first above z = (front share - static front share) L/h, so at a grip it does when h
     * lies above (2/3 - 1/2) 2.4 m over the grip (law page fixed-split).
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.6, 0.8, 0.9, 1.0, 1.1})
    void oddsOfTheRearAreThePartOfTheHeightsAboveTheCriticalOne(double grip) {
        Tolerance tolerance = run(Cars.TWIN.with("car.load_cases[0].cg_height: 480 ± 80 mm"));
        double expected = Math.clamp((0.56 - 0.4 / grip) / 0.16, 0, 1);
        AtGrip odds = at(tolerance, grip);
        assertThat(odds.rearFirst()).isCloseTo(expected, within(0.001));
        assertThat(odds.standardError()).isPositive().isLessThan(0.01);
        assertThat(odds.nothingLocks()).isZero();
    }

    @Test
    void theCriticalDecelerationSpreadsAsTheReciprocalOfTheHeight() {
        Tolerance tolerance = run(Cars.TWIN.with("car.load_cases[0].cg_height: 480 ± 80 mm"));
        Spread critical = tolerance.spread(Measure.CRITICAL_DECELERATION);
        assertThat(critical.loadCase()).isEqualTo("driver");
        assertThat(requireNonNull(critical.band()).p95()).isCloseTo(0.4 / 0.408, withinPercentage(CLOSE));
        assertThat(critical.owners()).extracting(Owner::path).containsExactly("car.load_cases[0].cg_height");
    }

    /** The last row is the car's own grip: 0.9 ± 0.1 lies above 0.4/0.48 with a chance of (1.0 - 0.8333)/0.2. */
    @Test
    void atItsOwnGripTheGripVaries() {
        Tolerance tolerance = run(Cars.TWIN.with("car.grip: 0.9 ± 0.1"));
        AtGrip own = tolerance.rearFirst().getFirst().atGrip().getLast();
        assertThat(own.grip()).isNull();
        assertThat(own.rearFirst()).isCloseTo((1.0 - 0.4 / 0.48) / 0.2, within(0.001));
    }

    /** No foot goes beyond 20 kN; with pistons of 10 mm the nominal car needs 25 times the effort of the one with 50 mm. */
    @Test
    void carsThatNoPushStopsAreToldApart() {
        double effort = 25 * Cars.TWIN.hardStop().point().pedalForceN();
        Tolerance tolerance = run(Cars.TWIN.with("""
                front.pistons[0]: 10 mm
                rear.pistons[0]: 10 mm
                pedal.ratio: 5 ± 0.5
                """));
        double out = 5 * effort / 20_000 - 4.5;
        assertThat(tolerance.spread(Measure.EFFORT).withoutValue()).isCloseTo(out, within(0.001));
        assertThat(tolerance.outOfTravel()).isGreaterThanOrEqualTo(out - 0.001);
        assertThat(tolerance.spread(Measure.EFFORT).beyondLimit()).isEqualTo(1);
    }

    /** Of inner radii from 95 to 115 mm a quarter lies at or above the outer one. */
    @Test
    void carsThatContradictThemselvesAreCounted() {
        Tolerance tolerance = run(Cars.TWIN.without("front.effective_radius").with("""
                front.pad.inner_radius: 105 ± 10 mm
                front.pad.outer_radius: 110 mm
                front.pad.pressure: uniform_wear
                """));
        assertThat(tolerance.unusable()).isCloseTo(1024, within(1));
        assertThat(requireNonNull(tolerance.spread(Measure.EFFORT).band()).p50())
                .isFinite();
    }

    @Test
    void theShareBeyondTheLimitIsThatOfTheReciprocal() {
        double nominal = Cars.TWIN.hardStop().point().pedalForceN();
        WrittenCar car = Cars.TWIN.with("pedal.ratio: 5 ± 0.5").with("intent.most_effort", nominal / 0.95);
        assertThat(run(car).spread(Measure.EFFORT).beyondLimit()).isCloseTo(4.75 - 4.5, within(0.001));
    }

    /** At 0.9 g the front carries 1/2 + 0.9 h/L of the load: more than the split's 2/3 when h lies above 444.4 mm. */
    @Test
    void theFrontShareIsHeldAgainstEachCarsOwnLoads() {
        Spread share =
                run(Cars.TWIN.with("car.load_cases[0].cg_height: 480 ± 80 mm")).spread(Measure.FRONT_SHARE);
        assertThat(requireNonNull(share.band()).p95()).isCloseTo(2.0 / 3, within(1e-9));
        assertThat(requireNonNull(share.limit())).isCloseTo(0.5 + 0.9 * 0.48 / 2.4, within(1e-9));
        assertThat(share.beyondLimit()).isCloseTo((0.56 - 0.4 / 0.9) / 0.16, within(0.001));
    }

    @Test
    void withoutAnythingUncertainNothingSpreads() {
        Tolerance tolerance = run(Cars.TWIN);
        Spread effort = tolerance.spread(Measure.EFFORT);
        assertThat(tolerance.inputs()).isEmpty();
        double nominal = requireNonNull(effort.nominal());
        assertThat(effort.band()).isEqualTo(new Spread.Quantiles(nominal, nominal, nominal, nominal, nominal));
        assertThat(effort.owners()).isEmpty();
        assertThat(effort.together()).isZero();
    }

    @Test
    void aCarThatContradictsItselfIsRefused() {
        WrittenCar car = Cars.TWIN.with("apply.balance_bar.offset: 35 mm");
        assertThat(Tolerances.run(car.build(), Plan.usual(1), () -> false))
                .isInstanceOfSatisfying(
                        ToleranceOutcome.Unusable.class,
                        unusable -> assertThat(unusable.problems()).isNotEmpty());
    }

    @Test
    void aRunEndsWhenNobodyWantsItsAnswer() {
        AtomicInteger asked = new AtomicInteger();
        assertThat(Tolerances.run(Cars.TWIN.build(), Plan.usual(2), () -> asked.incrementAndGet() > 3))
                .isInstanceOf(ToleranceOutcome.Cancelled.class);
        assertThat(asked.get()).isLessThanOrEqualTo(64);
    }

    @Test
    void plansThatMakeNoSenseAreRefused() {
        assertThatThrownBy(() -> new Plan(63, 1, 1)).hasMessageContaining("63");
        assertThatThrownBy(() -> new Plan(65_537, 1, 1)).hasMessageContaining("65537");
        assertThatThrownBy(() -> new Plan(64, 1, 0)).hasMessageContaining("0");
    }

    private static AtGrip at(Tolerance tolerance, double grip) {
        return tolerance.rearFirst().getFirst().atGrip().stream()
                .filter(row -> row.grip() != null && Math.abs(row.grip() - grip) < 1e-9)
                .findFirst()
                .orElseThrow();
    }

    private static Tolerance run(WrittenCar car) {
        return Runs.of(car, Plan.usual(2));
    }
}
