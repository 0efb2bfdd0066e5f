package org.brakewright.kernel.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DrumShoeTest {
    /** 1e-6 relative: agreement wanted with an independent computation (Simpson integration over the lining). */
    private static final double RECOMPUTED = 1e-4;

    /**
     * VERIFIED: Shigley's Mechanical Engineering Design, problem 16-1 (statement and 734 kPa seen; torques from memory of
     * the solutions manual). Drum 300 mm, pin at 125 mm, lining 0 to 120 deg, arm 2 (0.125 cos 30 deg).
     */
    private static final DrumShoe C1 =
            new DrumShoe(0.125, 0.150, 0, Math.toRadians(120), 2 * 0.125 * Math.cos(Math.toRadians(30)));

    private static final double C1_PUSH = 2200;
    private static final double C1_FRICTION = 0.28;
    private static final double C1_WIDTH = 0.040;

    /** VERIFIED: V. B. Bhandari, Design of Machine Elements, example 12.9. Lining 15 to 75 deg. */
    private static final DrumShoe C3 = new DrumShoe(0.200, 0.250, Math.toRadians(15), Math.toRadians(75), 0.200);

    @Test
    void pressesTheLiningsOfC1() {
        double leading = C1.leadingPressure(C1_PUSH, C1_FRICTION, C1_WIDTH);
        assertThat(leading).isCloseTo(734454.0651832898, withinPercentage(RECOMPUTED));
        assertThat(leading).isCloseTo(734e3, within(500.0)); // published, 3 digits
        assertThat(C1.trailingPressure(C1_PUSH, C1_FRICTION, C1_WIDTH))
                .isCloseTo(381959.3466342112, withinPercentage(RECOMPUTED));
    }

    @Test
    void turnsTheDrumOfC1() {
        double perFactor = C1_PUSH * C1.drumRadius();
        double leading = stable(C1.leading(C1_FRICTION)).value();
        double trailing = C1.trailing(C1_FRICTION).value();
        assertThat(leading).isCloseTo(0.8412837473917716, withinPercentage(RECOMPUTED));
        assertThat(trailing).isCloseTo(0.43751706978100735, withinPercentage(RECOMPUTED));
        // Published torques, from memory of the solutions manual: 277.6, 144.4 and 422 N m.
        assertThat(leading * perFactor).isCloseTo(277.6, within(0.05));
        assertThat(trailing * perFactor).isCloseTo(144.4, within(0.05));
        assertThat((leading + trailing) * perFactor).isCloseTo(422, within(0.5));
    }

    @Test
    void needsThePushAndGivesTheCapacityOfC3() {
        // Inputs of the example: greatest pressure 1 MPa on the leading shoe, width 50 mm, friction 0.3.
        double push = 1e6 / C3.leadingPressure(1, 0.3, 0.050);
        assertThat(push).isCloseTo(5025.4576, withinPercentage(RECOMPUTED)); // published
        assertThat(C3.trailingPressure(push, 0.3, 0.050)).isCloseTo(589408.278724059, withinPercentage(RECOMPUTED));
        double pair = stable(C3.leading(0.3)).value() + C3.trailing(0.3).value();
        assertThat(2 * pair * push * C3.drumRadius()).isCloseTo(2181.6143, withinPercentage(RECOMPUTED)); // published
    }

    /** Closed form: the moment of the pressure over that of the friction, integrated independently for C1. */
    @Test
    void locksByItselfFromOneFrictionOn() {
        double lock = C1.selfLockFriction();
        assertThat(lock).isCloseTo(0.886809755889653, withinPercentage(RECOMPUTED));
        assertThat(C1.leading(lock * 0.999)).isInstanceOf(BrakeFactor.Stable.class);
        assertThat(C1.leading(lock)).isEqualTo(new BrakeFactor.SelfLocking(lock, lock));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> C1.leadingPressure(C1_PUSH, lock, C1_WIDTH))
                .withMessageContaining("friction");
    }

    /** Closed form: without friction's own moment, leading and trailing shoes are alike in the limit of no friction. */
    @Test
    void leadingAndTrailingMeetWithoutFriction() {
        double little = 1e-9;
        assertThat(stable(C1.leading(little)).value())
                .isCloseTo(C1.trailing(little).value(), withinPercentage(1e-6));
    }

    /** Closed form: 1/trailing - 1/leading does not depend on friction, since both moments are linear in it. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void reciprocalsDifferByTheSameAmountAtEveryFriction(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            DrumShoe shoe = Shoes.any(random);
            double low = difference(shoe, shoe.selfLockFriction() * random.nextDouble(0.1, 0.5));
            double high = difference(shoe, shoe.selfLockFriction() * random.nextDouble(0.5, 0.9));
            assertThat(high).isCloseTo(low, withinPercentage(1e-7));
        }
    }

    /** The derivative against a central difference with the step h that balances rounding and curvature. */
    @ParameterizedTest
    @ValueSource(ints = {4, 5, 6})
    void risesWithFrictionAsItsDerivativeSays(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            DrumShoe shoe = Shoes.any(random);
            double friction = shoe.selfLockFriction() * random.nextDouble(0.1, 0.8);
            double h = 1e-5 * friction;
            double leading = (stable(shoe.leading(friction + h)).value()
                            - stable(shoe.leading(friction - h)).value())
                    / (2 * h);
            double trailing = (shoe.trailing(friction + h).value()
                            - shoe.trailing(friction - h).value())
                    / (2 * h);
            assertThat(stable(shoe.leading(friction)).perFriction()).isCloseTo(leading, withinPercentage(1e-3));
            assertThat(shoe.trailing(friction).perFriction()).isCloseTo(trailing, withinPercentage(1e-3));
            assertThat(leading).isGreaterThan(trailing);
        }
    }

    @Test
    void refusesAPinOutsideTheDrumAndLiningsOutOfOrder() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DrumShoe(0.15, 0.15, 0, 1, 0.2))
                .withMessageContaining("pivotDistance")
                .withMessageContaining("0.15");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DrumShoe(0.12, 0.15, 1, 1, 0.2))
                .withMessageContaining("toeAngle");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DrumShoe(0.12, 0.15, 0, 1, Double.NaN))
                .withMessageContaining("actuationArm");
    }

    private static double difference(DrumShoe shoe, double friction) {
        return 1 / shoe.trailing(friction).value()
                - 1 / stable(shoe.leading(friction)).value();
    }

    private static BrakeFactor.Stable stable(BrakeFactor factor) {
        assertThat(factor).isInstanceOf(BrakeFactor.Stable.class);
        return (BrakeFactor.Stable) factor;
    }
}
