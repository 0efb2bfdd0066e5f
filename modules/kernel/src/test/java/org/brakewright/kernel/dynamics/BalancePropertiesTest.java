package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every car; cars and roads are drawn by seeds. Tolerances are those of rounding. */
class BalancePropertiesTest {
    private static final double ROUNDING = 1e-9;

    private static void everyCar(int seed, BiConsumer<AxleLoads, SplittableRandom> check) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            check.accept(Cars.any(random), random);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void axleLoadsSumToTheWeight(int seed) {
        everyCar(seed, (car, random) -> {
            double decelerationG = random.nextDouble(-3, 6);
            assertThat(car.front(decelerationG) + car.rear(decelerationG))
                    .isCloseTo(car.weight(), withinPercentage(ROUNDING));
            assertThat(car.rear(decelerationG)).isBetween(0.0, car.weight());
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void momentsAboutTheFrontContactBalance(int seed) {
        everyCar(seed, (car, random) -> {
            double decelerationG = random.nextDouble(0, car.liftOffDecelerationG());
            double behindFront = car.rearStatic() * car.wheelbase() / car.weight();
            double moment = car.weight() * behindFront - decelerationG * car.weight() * car.cgHeight();
            assertThat(car.rear(decelerationG) * car.wheelbase()).isCloseTo(moment, within(1e-9 * car.weight()));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void idealForcesUseTheSameGripAtBothAxles(int seed) {
        everyCar(seed, (car, random) -> {
            IdealCurve ideal = new IdealCurve(car);
            double decelerationG = car.liftOffDecelerationG() * random.nextDouble(0.01, 0.99);
            double front = ideal.frontForce(decelerationG);
            double rear = ideal.rearForce(decelerationG);
            assertThat(Adhesion.front(front, car, decelerationG)).isCloseTo(decelerationG, withinPercentage(ROUNDING));
            assertThat(Adhesion.rear(rear, car, decelerationG)).isCloseTo(decelerationG, withinPercentage(ROUNDING));
            assertThat(Adhesion.efficiency(front, rear, car)).isCloseTo(1, within(1e-9));
            assertThat(rear).isLessThanOrEqualTo(ideal.rearForce(ideal.vertexDecelerationG()) * (1 + 1e-12));
            assertThat(ideal.rearForceAtFront(front)).isCloseTo(rear, within(1e-9 * car.weight()));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void theFirstLockUsesAllGripOfItsAxleAndNoMoreOfTheOther(int seed) {
        everyCar(seed, (car, random) -> {
            double share = random.nextDouble(0.05, 0.95);
            double grip = random.nextDouble(0.1, 1.2);
            LockPoint lock = WheelLock.fixedSplit(share, car, grip);
            double force = lock.decelerationG() * car.weight();
            double front = Adhesion.front((1 - share) * force, car, lock.decelerationG());
            double rear = Adhesion.rear(share * force, car, lock.decelerationG());
            assertThat(Math.max(front, rear)).isCloseTo(grip, withinPercentage(ROUNDING));
            assertThat(front > rear).isEqualTo(lock.first() == LockPoint.First.FRONT);
            assertThat(lock.efficiency()).isLessThanOrEqualTo(1);
            assertThat(lock.decelerationG()).isCloseTo(grip * lock.efficiency(), withinPercentage(ROUNDING));
        });
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void theFrontLocksFirstBelowTheCriticalDeceleration(int seed) {
        everyCar(seed, (car, random) -> {
            double share = random.nextDouble(0.05, 0.95);
            double grip = random.nextDouble(0.1, 1.2);
            boolean below = grip < FixedSplit.criticalDecelerationG(share, car);
            assertThat(WheelLock.fixedSplit(share, car, grip).first())
                    .isEqualTo(below ? LockPoint.First.FRONT : LockPoint.First.REAR);
        });
    }

    /** A fixed split of 0 or 1 is one axle braked: two ways to the same number. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void oneAxleBrakedIsAnExtremeSplit(int seed) {
        everyCar(seed, (car, random) -> {
            double grip = random.nextDouble(0.1, 1.2);
            double frontOnly = OneAxleBraked.frontOnly(car, grip);
            double rearOnly = OneAxleBraked.rearOnly(car, grip);
            assertThat(WheelLock.fixedSplit(0, car, grip).decelerationG())
                    .isCloseTo(frontOnly, withinPercentage(ROUNDING));
            assertThat(WheelLock.fixedSplit(1, car, grip).decelerationG())
                    .isCloseTo(rearOnly, withinPercentage(ROUNDING));
            assertThat(OneAxleBraked.allWheels(car, grip)).isGreaterThanOrEqualTo(Math.max(frontOnly, rearOnly));
        });
    }

    /** A car so short and tall that braking lifts its rear: psi 0.4, chi 0.5, lift-off at 0.8 g by hand. */
    @Test
    void noCarBrakesBeyondLiftOff() {
        AxleLoads tall = Cars.ofRatios(0.4, 0.5);
        assertThat(tall.liftOffDecelerationG()).isCloseTo(0.8, within(1e-15));
        assertThat(OneAxleBraked.frontOnly(tall, 1.0)).isCloseTo(0.8, within(1e-15));
        assertThat(OneAxleBraked.allWheels(tall, 1.0)).isCloseTo(0.8, within(1e-15));
        assertThat(FixedSplit.frontLimitedEfficiency(0.6, tall, 0.9)).isEmpty();
        assertThat(WheelLock.fixedSplit(0.6, tall, 0.9).first()).isEqualTo(LockPoint.First.REAR);
    }
}
