package org.brakewright.kernel.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BrakeFactorTest {
    /** Shigley's Mechanical Engineering Design, problem 16-1: see {@link DrumShoeTest}. */
    private static final DrumShoe C1 =
            new DrumShoe(0.125, 0.150, 0, Math.toRadians(120), 2 * 0.125 * Math.cos(Math.toRadians(30)));

    /** VERIFIED inputs, answer recomputed: 0.8412837 + 0.4375171 at a friction of 0.28. */
    @Test
    void addsLeadingAndTrailingShoe() {
        assertThat(value(BrakeFactor.leadingTrailing(C1, C1, 0.28)))
                .isCloseTo(0.8412837473917716 + 0.43751706978100735, withinPercentage(1e-4));
    }

    @Test
    void doublesTheShoeOfATwoLeadingBrakeForwardAndBack() {
        assertThat(value(BrakeFactor.twoLeading(C1, 0.28))).isCloseTo(2 * 0.8412837473917716, withinPercentage(1e-4));
        assertThat(BrakeFactor.twoTrailing(C1, 0.28).value())
                .isCloseTo(2 * 0.43751706978100735, withinPercentage(1e-4));
    }

    /** Closed form: C1's shoe locks by itself at 0.8868 (integrated independently). */
    @Test
    void reportsSelfLockAsAnOutcome() {
        double tooMuch = 0.9;
        assertThat(BrakeFactor.leadingTrailing(C1, C1, tooMuch))
                .isInstanceOfSatisfying(
                        BrakeFactor.SelfLocking.class,
                        lock -> assertThat(lock.selfLockFriction()).isCloseTo(0.886809755889653, within(1e-9)));
        assertThat(BrakeFactor.twoLeading(C1, tooMuch)).isInstanceOf(BrakeFactor.SelfLocking.class);
    }

    /** Closed form: statics of the two free shoes, from forces summed over the linings; see {@link FreeShoe}. */
    @ParameterizedTest
    @ValueSource(ints = {11, 12, 13})
    void duoServoKeepsBothFreeShoesInBalance(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 50; i++) {
            DuoServo duo = Shoes.duo(random);
            double friction = duo.selfLockFriction() * random.nextDouble(0.1, 0.8);
            double cylinder = duo.primary().actuationArm() - duo.primary().pivotDistance();
            FreeShoe primary = FreeShoe.of(duo.primary(), friction);
            FreeShoe secondary = FreeShoe.of(duo.secondary(), friction);
            double firstPressure = duo.primary().actuationArm() / primary.moment();
            // Sideways balance of the primary under a push of 1: cylinder and link push out, the drum pushes in.
            double link = firstPressure * primary.inward() - 1;
            double secondPressure =
                    (link * duo.secondary().actuationArm() + duo.secondary().pivotDistance() - cylinder)
                            / secondary.moment();
            double torque = firstPressure * primary.torque() + secondPressure * secondary.torque();
            assertThat(value(duo.factor(friction)))
                    .isCloseTo(torque / duo.primary().drumRadius(), withinPercentage(1e-4));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {14, 15, 16})
    void everyArrangementRisesWithFrictionAsItsDerivativeSays(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            DuoServo duo = Shoes.duo(random);
            DrumShoe shoe = duo.primary();
            double friction = duo.selfLockFriction() * random.nextDouble(0.1, 0.8);
            risesAsSaid(mu -> duo.factor(mu), friction);
            risesAsSaid(mu -> BrakeFactor.leadingTrailing(shoe, duo.secondary(), mu), friction);
            risesAsSaid(mu -> BrakeFactor.twoLeading(shoe, mu), friction);
            risesAsSaid(mu -> BrakeFactor.twoTrailing(shoe, mu), friction);
        }
    }

    /** Limpert, Brake Design and Safety, ch. 2 (from memory): the more servo, the higher the factor and its sensitivity. */
    @ParameterizedTest
    @ValueSource(ints = {17, 18})
    void servoOrdersFactorAndSensitivity(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 100; i++) {
            DuoServo duo = Shoes.duo(random);
            double friction = duo.selfLockFriction() * random.nextDouble(0.2, 0.8);
            BrakeFactor.Stable simplex = stable(BrakeFactor.leadingTrailing(duo.primary(), duo.primary(), friction));
            BrakeFactor.Stable twoLeading = stable(BrakeFactor.twoLeading(duo.primary(), friction));
            BrakeFactor.Stable twoTrailing = BrakeFactor.twoTrailing(duo.primary(), friction);
            assertThat(twoTrailing.value()).isLessThan(simplex.value());
            assertThat(simplex.value()).isLessThan(twoLeading.value());
            assertThat(simplex.relativeSensitivity(friction)).isLessThan(twoLeading.relativeSensitivity(friction));
            assertThat(twoTrailing.relativeSensitivity(friction)).isLessThan(1);
            assertThat(stable(duo.factor(friction)).relativeSensitivity(friction))
                    .isGreaterThan(1);
        }
    }

    @Test
    void refusesShoesOfDifferentDrumsAndALinkThatDoesNotReach() {
        DrumShoe smaller = new DrumShoe(0.1, 0.12, 0, 2, 0.2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BrakeFactor.leadingTrailing(C1, smaller, 0.3))
                .withMessageContaining("drumRadius");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BrakeFactor.duoServo(C1, C1, 0.3))
                .withMessageContaining("secondary.actuationArm");
    }

    private static void risesAsSaid(DoubleFunction<BrakeFactor> factor, double friction) {
        double h = 1e-5 * friction;
        double slope = (value(factor.apply(friction + h)) - value(factor.apply(friction - h))) / (2 * h);
        assertThat(slope).isPositive();
        assertThat(stable(factor.apply(friction)).perFriction()).isCloseTo(slope, withinPercentage(1e-3));
    }

    private static double value(BrakeFactor factor) {
        return stable(factor).value();
    }

    private static BrakeFactor.Stable stable(BrakeFactor factor) {
        assertThat(factor).isInstanceOf(BrakeFactor.Stable.class);
        return (BrakeFactor.Stable) factor;
    }
}
