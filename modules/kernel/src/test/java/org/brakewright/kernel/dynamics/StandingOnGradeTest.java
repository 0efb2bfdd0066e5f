package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StandingOnGradeTest {
    /** Closed form: on a slope the loads are those of braking at tan(angle), scaled by cos(angle). */
    @ParameterizedTest
    @ValueSource(ints = {61, 62})
    void leansLikeABrakingCar(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 200; i++) {
            AxleLoads car = Cars.any(random);
            double angle = random.nextDouble(-0.4, 0.4);
            StandingOnGrade standing = new StandingOnGrade(car, angle);
            assertThat(standing.rear()).isCloseTo(car.rear(-Math.tan(angle)) * Math.cos(angle), within(1e-7));
            assertThat(standing.front() + standing.rear()).isCloseTo(car.weight() * Math.cos(angle), within(1e-7));
            assertThat(standing.forceNeeded()).isCloseTo(car.weight() * Math.sin(Math.abs(angle)), within(1e-7));
        }
    }

    /** Statics by hand: rear wheels that hold a nose-up car are pressed harder than those that hold a nose-down one. */
    @Test
    void rearBrakesHoldBetterNoseUp() {
        AxleLoads car = new AxleLoads(5000, 5000, 2.5, 0.5);
        double angle = Math.atan(0.2);
        double up = new StandingOnGrade(car, angle).rearGripNeeded();
        double down = new StandingOnGrade(car, -angle).rearGripNeeded();
        // tan a / (psi +/- chi tan a) with psi 0.5, chi 0.2, tan a 0.2.
        assertThat(up).isCloseTo(0.2 / 0.54, within(1e-12));
        assertThat(down).isCloseTo(0.2 / 0.46, within(1e-12));
        assertThat(new StandingOnGrade(car, -angle).frontGripNeeded()).isCloseTo(up, within(1e-12));
    }

    @Test
    void refusesASlopeOnWhichTheCarTipsOver() {
        AxleLoads car = new AxleLoads(5000, 5000, 1, 0.5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StandingOnGrade(car, Math.PI / 4 + 1e-9))
                .withMessageContaining("noseUpAngle");
        assertThat(new StandingOnGrade(car, Math.PI / 4 - 1e-9).front()).isPositive();
    }
}
