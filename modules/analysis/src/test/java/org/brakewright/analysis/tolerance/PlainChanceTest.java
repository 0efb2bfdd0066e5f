package org.brakewright.analysis.tolerance;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.brakewright.analysis.Analyse;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.analysis.tolerance.Spread.Measure;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.model.Build;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A car of which much is unknown, against plain chance and against itself on other threads and seeds. */
class PlainChanceTest {
    private static final int DRAWN = 20_000;

    /** Four standard errors: one comparison in some ten thousand fails by chance, and the seeds are fixed. */
    private static final double ERRORS = 4;

    private static final WrittenCar CAR = Cars.TWIN
            .without("pedal.free_play")
            .without("pedal.efficiency")
            .without("pedal.mount_stiffness")
            .without("fluid")
            .without("lines")
            .without("front.running_clearance")
            .without("front.caliper_spread")
            .without("rear.threshold_pressure")
            .assumed("front.pad_friction", "0.40 ± 0.05")
            .with("""
            rear.pad_friction: 0.40 ± 0.05
            car.load_cases[0].cg_height: 480 ± 40 mm
            car.load_cases[1].name: loaded
            car.load_cases[1].front_axle: 520 kg
            car.load_cases[1].rear_axle: 640 kg
            car.load_cases[1].cg_height: 500 ± 40 mm
            """);

    @Test
    void plainChanceGivesTheSameBandsAndOdds() {
        Tolerance tolerance = Runs.of(CAR, Plan.usual(2));
        List<Analysis> drawn = drawn(tolerance.inputs());
        HardStop nominal = CAR.hardStop();
        assertThat(tolerance.spread(Measure.EFFORT).nominal())
                .isEqualTo(nominal.point().pedalForceN());
        holds(tolerance.spread(Measure.EFFORT), drawn, stop -> stop.point().pedalForceN());
        holds(tolerance.spread(Measure.TRAVEL), drawn, stop -> stop.point().pedalTravelM());
        holds(tolerance.spread(Measure.FRONT_SHARE), drawn, HardStop::frontShare);
        for (int number = 0; number < 2; number++) {
            int of = number;
            double rear = share(drawn, car -> first(car, of) == Lock.Axle.REAR ? 1 : 0);
            RearFirstOdds.AtGrip odds =
                    tolerance.rearFirst().get(number).atGrip().get(7);
            assertThat(odds.grip()).isEqualTo(0.9);
            assertThat(rear).isBetween(0.05, 0.95);
            assertThat(odds.rearFirst()).isCloseTo(rear, within(ERRORS * error(rear)));
        }
    }

    /** Known inputs take their share of the variance away: the second method freezes the owner and measures what is left. */
    @Test
    void freezingTheFirstOwnerTakesItsShareOfTheVarianceAway() {
        Tolerance tolerance = Runs.of(CAR, Plan.usual(2));
        Owner owner = tolerance.spread(Measure.EFFORT).owners().getFirst();
        assertThat(owner.path()).isEqualTo("front.pad_friction");
        double all = variance(drawn(tolerance.inputs()));
        List<Input> others = tolerance.inputs().stream()
                .filter(input -> !input.path().equals(owner.path()))
                .toList();
        // Variances of 20,000 each are good to 1 %; the rest is what friction does only together with others.
        assertThat(1 - variance(drawn(others)) / all).isCloseTo(owner.share(), within(0.04));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 7})
    void anyNumberOfThreadsGivesTheSameAnswer(int threads) {
        assertThat(Runs.of(CAR, new Plan(1000, 5, threads))).isEqualTo(Runs.of(CAR, new Plan(1000, 5, 1)));
    }

    @Test
    void anotherSeedDrawsOtherCarsWithTheSameSpread() {
        Spread one = Runs.of(CAR, new Plan(4096, 1, 2)).spread(Measure.EFFORT);
        Spread other = Runs.of(CAR, new Plan(4096, 2, 2)).spread(Measure.EFFORT);
        assertThat(other).isNotEqualTo(one);
        double width = requireNonNull(one.band()).p95() - one.band().p05();
        assertThat(requireNonNull(other.band()).p95()).isCloseTo(one.band().p95(), within(0.02 * width));
        assertThat(other.owners().getFirst().share())
                .isCloseTo(one.owners().getFirst().share(), within(0.01));
    }

    private static void holds(Spread spread, List<Analysis> drawn, ToDoubleFunction<HardStop> measure) {
        Spread.Quantiles band = requireNonNull(spread.band());
        below(drawn, measure, band.p05(), 0.05);
        below(drawn, measure, band.p25(), 0.25);
        below(drawn, measure, band.p50(), 0.50);
        below(drawn, measure, band.p75(), 0.75);
        below(drawn, measure, band.p95(), 0.95);
    }

    private static void below(List<Analysis> drawn, ToDoubleFunction<HardStop> measure, double limit, double expected) {
        double below = share(drawn, car -> measure.applyAsDouble(requireNonNull(car.hardStop())) < limit ? 1 : 0);
        assertThat(below).isCloseTo(expected, within(ERRORS * error(expected)));
    }

    private static double share(List<Analysis> drawn, ToDoubleFunction<Analysis> counts) {
        return drawn.stream().mapToDouble(counts).sum() / drawn.size();
    }

    /** Of plain chance; the even points' own error is far smaller. */
    private static double error(double share) {
        return Math.sqrt(share * (1 - share) / DRAWN);
    }

    private static double variance(List<Analysis> drawn) {
        double mean = share(drawn, PlainChanceTest::effort);
        return share(drawn, car -> (effort(car) - mean) * (effort(car) - mean));
    }

    private static double effort(Analysis car) {
        return requireNonNull(car.hardStop()).point().pedalForceN();
    }

    private static Lock.Axle first(Analysis car, int number) {
        return car.loadCases().get(number).lock().stream()
                .filter(lock -> lock.grip() == 0.9)
                .findFirst()
                .orElseThrow()
                .axle();
    }

    private static List<Analysis> drawn(List<Input> inputs) {
        SplittableRandom chance = new SplittableRandom(11);
        Build build = CAR.build();
        List<Analysis> cars = new ArrayList<>();
        for (int i = 0; i < DRAWN; i++) {
            Map<String, Double> values = new HashMap<>();
            inputs.forEach(input -> values.put(input.path(), value(input, chance)));
            if (Resolve.resolve(build, values) instanceof Resolution.Resolved resolved) {
                cars.add(Analyse.forJudging(resolved.build()));
            }
        }
        assertThat(cars).hasSize(DRAWN);
        return cars;
    }

    /** Thrown at the box around the density until one falls under it. */
    private static double value(Input input, SplittableRandom chance) {
        while (true) {
            double x = input.low() + chance.nextDouble() * (input.high() - input.low());
            double side = x < input.value() ? x - input.low() : input.high() - x;
            double length = x < input.value() ? input.value() - input.low() : input.high() - input.value();
            if (input.belief() == Input.Belief.EVEN || chance.nextDouble() < side / length) {
                return x;
            }
        }
    }
}
