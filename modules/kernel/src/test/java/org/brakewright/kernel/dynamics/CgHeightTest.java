package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CgHeightTest {
    /** Round trip: put a center of gravity somewhere, turn the car by rotating points, weigh it, find the height again. */
    @ParameterizedTest
    @ValueSource(ints = {51, 52, 53, 54})
    void findsTheHeightOfACarThatWasTurned(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            Rig rig = Rig.any(random);
            double angle = random.nextDouble(0.05, 0.5);
            for (AxleLift.Raised raised : AxleLift.Raised.values()) {
                CgHeight found = CgHeight.fromAxleLift(rig.level(), rig.raise(raised, angle));
                assertThat(found.height()).isCloseTo(rig.cgHeight(), within(1e-9));
                assertThat(found.angle()).isCloseTo(angle, within(1e-9));
            }
        }
    }

    /** Closed form of handbooks for equal wheels: h = r + L dF/(W tan a), sin a = rise/L. */
    @Test
    void isTheUsualFormulaForEqualWheels() {
        WeighedCar car = new WeighedCar(5000, 4500, 2.4, 0.3, 0.3);
        double rise = 0.6;
        double expected = 0.3 + 2.4 * 210 / (9500 * Math.tan(Math.asin(rise / 2.4)));
        assertThat(CgHeight.fromAxleLift(car, new AxleLift(AxleLift.Raised.FRONT, rise, 4710))
                        .height())
                .isCloseTo(expected, within(1e-12));
    }

    /** The sensitivity against a second weighing that reads 1 N more; the height is linear in the load. */
    @Test
    void saysWhatANewtonOnTheScaleIsWorth() {
        WeighedCar car = new WeighedCar(5000, 4500, 2.4, 0.29, 0.33);
        CgHeight one = CgHeight.fromAxleLift(car, new AxleLift(AxleLift.Raised.FRONT, 0.6, 4710));
        CgHeight more = CgHeight.fromAxleLift(car, new AxleLift(AxleLift.Raised.FRONT, 0.6, 4711));
        assertThat(more.height() - one.height()).isCloseTo(one.perLoad(), within(1e-12));
    }

    @Test
    void refusesAWeighingThatCannotBe() {
        WeighedCar car = new WeighedCar(5000, 4500, 2.4, 0.3, 0.3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CgHeight.fromAxleLift(car, new AxleLift(AxleLift.Raised.FRONT, 0.6, 9501)))
                .withMessageContaining("lowerAxleLoad")
                .withMessageContaining("9501");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> CgHeight.fromAxleLift(car, new AxleLift(AxleLift.Raised.REAR, 2.4, 5100)))
                .withMessageContaining("rise");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AxleLift(AxleLift.Raised.REAR, 0, 5100))
                .withMessageContaining("rise");
    }

    private record Wheels(double front, double rear) {}

    /** A car of known center of gravity; rear wheel centers at x = 0, front at x = wheelbase. Ranges are ours. */
    private record Rig(double weight, double cgX, double cgHeight, double wheelbase, Wheels wheels) {
        static Rig any(SplittableRandom random) {
            double wheelbase = random.nextDouble(2, 3.2);
            Wheels wheels = new Wheels(random.nextDouble(0.25, 0.36), random.nextDouble(0.25, 0.36));
            return new Rig(
                    random.nextDouble(4e3, 2e4),
                    wheelbase * random.nextDouble(0.35, 0.65),
                    random.nextDouble(0.3, 0.7),
                    wheelbase,
                    wheels);
        }

        WeighedCar level() {
            double front = weight * cgX / wheelbase;
            return new WeighedCar(front, weight - front, wheelbase, wheels.front(), wheels.rear());
        }

        AxleLift raise(AxleLift.Raised raised, double angle) {
            double turn = raised == AxleLift.Raised.FRONT ? angle : -angle;
            double[] rear = turned(0, wheels.rear(), turn);
            double[] front = turned(wheelbase, wheels.front(), turn);
            double[] cg = turned(cgX, cgHeight, turn);
            double onFront = weight * (cg[0] - rear[0]) / (front[0] - rear[0]);
            double climb = front[1] - rear[1] - (wheels.front() - wheels.rear());
            return raised == AxleLift.Raised.FRONT
                    ? new AxleLift(raised, climb, weight - onFront)
                    : new AxleLift(raised, -climb, onFront);
        }

        private static double[] turned(double x, double z, double angle) {
            return new double[] {x * Math.cos(angle) - z * Math.sin(angle), x * Math.sin(angle) + z * Math.cos(angle)};
        }
    }
}
