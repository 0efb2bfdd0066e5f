package org.brakewright.kernel.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WheelBrakeTest {
    /**
     * PART VERIFIED: J. Cutnell, K. Johnson, Physics, fluids chapter (statement and method), answer recomputed. Master 1.8 cm2,
     * wheel cylinder 6.4 cm2, friction 0.50 on one shoe without servo.
     */
    @ParameterizedTest
    @CsvSource({"47, 0.34, 28.408888888888892", "42, 0.28, 20.90666666666667"})
    void turnsTheDrumOfB5(double push, double radius, double torque) {
        DrumBrake brake = new DrumBrake(0.50, 6.4e-4, radius, 0);
        assertThat(brake.torque(push / 1.8e-4)).isCloseTo(torque, withinPercentage(1e-4));
    }

    /** Closed form: no torque up to the threshold, then proportional, and the inverse brings back the pressure. */
    @ParameterizedTest
    @ValueSource(ints = {31, 32})
    void startsAtItsThresholdAndReturns(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            double threshold = random.nextDouble(0, 5e5);
            DiscBrake disc = new DiscBrake(random.nextDouble(1e-3, 4e-3), random.nextDouble(0.2, 0.6), 0.12, threshold);
            DrumBrake drum = new DrumBrake(random.nextDouble(1, 6), random.nextDouble(2e-4, 6e-4), 0.11, threshold);
            double pressure = threshold + random.nextDouble(1e5, 1e7);
            assertThat(disc.torque(threshold)).isZero();
            assertThat(drum.torque(threshold * random.nextDouble())).isZero();
            assertThat(disc.pressureFor(disc.torque(pressure))).isCloseTo(pressure, withinPercentage(1e-9));
            assertThat(drum.pressureFor(drum.torque(pressure))).isCloseTo(pressure, withinPercentage(1e-9));
            assertThat(disc.torque(pressure))
                    .isCloseTo(disc.torquePerPressure() * (pressure - threshold), withinPercentage(1e-9));
        }
    }

    @Test
    void refusesWhatNoBrakeHas() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DiscBrake(-1, 0.4, 0.1, 0))
                .withMessageContaining("pistonAreaOneSide")
                .withMessageContaining("-1.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DiscBrake(1e-3, Double.NaN, 0.1, 0))
                .withMessageContaining("friction");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new DrumBrake(2, 1e-4, 0.1, -1))
                .withMessageContaining("thresholdPressure");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ParkingBrake(6, 1.2, 3, 2))
                .withMessageContaining("cableEfficiency");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new GradeHold(9000, 2))
                .withMessageContaining("angle");
    }

    /** Closed form: a force of half the weight holds 30 deg; the whole weight holds a wall. */
    @Test
    void holdsTheSteepestGrade() {
        assertThat(GradeHold.steepestAngle(9000, 4500)).isCloseTo(Math.PI / 6, withinPercentage(1e-9));
        assertThat(GradeHold.steepestAngle(9000, 10000)).isEqualTo(Math.PI / 2);
    }

    /** Round trip: the lever force found for a torque gives that torque. */
    @Test
    void findsTheLeverForce() {
        ParkingBrake brake = new ParkingBrake(7, 0.8, 4, 2);
        assertThat(brake.torque(brake.leverForceFor(400, 2.1, 0.1), 2.1, 0.1)).isCloseTo(400, withinPercentage(1e-9));
    }
}
