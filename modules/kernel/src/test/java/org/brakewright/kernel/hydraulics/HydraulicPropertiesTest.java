package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every part; parts are drawn by seeds within the sizes of cars. */
class HydraulicPropertiesTest {
    private static final int PARTS = 200;

    private static void rises(DoubleUnaryOperator law, double most, SplittableRandom random) {
        double low = random.nextDouble(0, most);
        double high = low + random.nextDouble(0, most);
        assertThat(law.applyAsDouble(high)).isGreaterThanOrEqualTo(law.applyAsDouble(low));
    }

    /** A continuous law moves by no more than its steepest slope allows. */
    private static void neverSteeperThan(double slope, DoubleUnaryOperator law, double at) {
        double step = 1e-6 * at;
        assertThat(law.applyAsDouble(at + step) - law.applyAsDouble(at)).isLessThanOrEqualTo(slope * step * 1.001);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void masters(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < PARTS; i++) {
            MasterCylinder master = new MasterCylinder(
                    Bore.area(random.nextDouble(0.012, 0.03)), random.nextDouble(0, 150), random.nextDouble(0.7, 1));
            double push = random.nextDouble(150, 6000);
            rises(master::pressure, 6000, random);
            assertThat(master.push(master.pressure(push))).isCloseTo(push, within(1e-9 * push));
            assertThat(master.pressure(push) * master.area()).isLessThanOrEqualTo(push);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void valves(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < PARTS; i++) {
            ProportioningValve proportioning =
                    new ProportioningValve(random.nextDouble(0, 6e6), random.nextDouble(0.01, 1));
            double opening = random.nextDouble(0, 1e6);
            MeteringValve metering = new MeteringValve(opening, opening + random.nextDouble(1e5, 5e6));
            double inlet = random.nextDouble(1e6, 15e6);
            rises(proportioning::outlet, 15e6, random);
            rises(metering::outlet, 15e6, random);
            assertThat(proportioning.outlet(inlet)).isBetween(0.0, inlet * (1 + 1e-12));
            assertThat(metering.outlet(inlet)).isBetween(0.0, inlet);
            assertThat(proportioning.inlet(proportioning.outlet(inlet)).orElseThrow())
                    .isCloseTo(inlet, within(1e-9 * inlet));
            assertThat(metering.inlet(metering.outlet(inlet))).isCloseTo(inlet, within(1e-9 * inlet));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void boosters(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < PARTS; i++) {
            VacuumBooster booster = new VacuumBooster(
                    random.nextDouble(0, 150),
                    random.nextDouble(1, 9),
                    random.nextDouble(0.02, 0.09),
                    random.nextDouble(0, 9e4),
                    random.nextDouble(0.6, 1));
            double input = random.nextDouble(1, 5000);
            rises(booster::output, 5000, random);
            neverSteeperThan(booster.ratio(), booster::output, booster.crackInForce() * (1 - 1e-7) + 1e-9);
            neverSteeperThan(booster.ratio(), booster::output, booster.runOutInput() * (1 - 1e-7) + 1e-9);
            assertThat(booster.input(booster.output(input))).isCloseTo(input, within(1e-9 * input));
            assertThat(booster.output(input)).isBetween(input, booster.ratio() * input * (1 + 1e-12));
            assertThat(booster.output(input)).isLessThanOrEqualTo((input + booster.fullAssist()) * (1 + 1e-12));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void tubesAndAir(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < PARTS; i++) {
            double outside = random.nextDouble(0.004, 0.012);
            Tube tube = new Tube(outside, outside * random.nextDouble(0.02, 0.45));
            assertThat(tube.hoopStressAtBore(1e6)).isBetween(tube.thinWallStress(1e6), tube.barlowStress(1e6));
            assertThat(tube.swell(2, 1e7, 120e9, 0.33)).isPositive();
            double exponent = random.nextDouble(1, 1.4);
            rises(pressure -> EntrainedAir.takenUp(1e-6, pressure, exponent), 1e7, random);
            assertThat(EntrainedAir.takenUp(1e-6, random.nextDouble(0, 1e9), exponent))
                    .isBetween(0.0, 1e-6);
        }
    }

    /** Taken at its pressure, gas is never softer than with the share it had at atmosphere. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void shrinkingGasIsStiffer(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < PARTS; i++) {
            EffectiveModulus mixture = new EffectiveModulus(
                    random.nextDouble(0, 0.1), random.nextDouble(1, 1.4), random.nextDouble(1e9, 2e9), 101325);
            double pressure = random.nextDouble(101325, 2e7);
            assertThat(mixture.shrinkingGas(pressure))
                    .isBetween(mixture.constantShare(pressure) * (1 - 1e-12), mixture.liquidModulus() * (1 + 1e-12));
            rises(p -> mixture.shrinkingGas(101325 + p), 1e7, random);
        }
    }
}
