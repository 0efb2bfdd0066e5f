package org.brakewright.analysis.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The height of the centre of gravity from an axle lift (round trip): a car of known height is turned about its lower wheel
 * centers and weighed by plane statics, and the resolved build must hold the height again.
 */
class AxleLiftTest {
    private static final double WHEELBASE = 2.4;
    private static final double FRONT = 450;
    private static final double REAR = 550;

    @ParameterizedTest
    @CsvSource({
        "rear, 0.30, 0.30, 0.60, 0.48",
        "rear, 0.29, 0.34, 0.50, 0.55",
        "rear, 0.34, 0.29, 1.20, 0.42",
        "front, 0.30, 0.30, 0.60, 0.48",
        "front, 0.29, 0.34, 0.80, 0.51",
        "front, 0.34, 0.29, 0.30, 0.65"
    })
    void theHeightComesBack(String raised, double frontRadius, double rearRadius, double rise, double height) {
        boolean rear = raised.equals("rear");
        double low = rear ? frontRadius : rearRadius;
        double high = rear ? rearRadius : frontRadius;
        double fromLow = WHEELBASE * (rear ? REAR : FRONT) / (FRONT + REAR);
        WrittenCar car = Cars.TWIN
                .without("car.load_cases[0].cg_height")
                .with("car.load_cases[0].front_axle", FRONT)
                .with("car.load_cases[0].rear_axle", REAR)
                .with("car.front_tyre_radius", frontRadius)
                .with("car.rear_tyre_radius", rearRadius)
                .with("car.load_cases[0].axle_lift.raised: " + raised)
                .with("car.load_cases[0].axle_lift.rise", rise)
                .with(
                        "car.load_cases[0].axle_lift.lower_axle",
                        (FRONT + REAR) * lowerShare(high - low, rise, fromLow, height - low));
        assertThat(car.resolved().car().heaviest().cgHeight()).isCloseTo(height, within(1e-9));
    }

    /** Share of the weight on the lower axle, both lengths taken along the ground between the wheel centers. */
    private static double lowerShare(double step, double rise, double along, double up) {
        double angle = angle(step, rise);
        double base = WHEELBASE * Math.cos(angle) - step * Math.sin(angle);
        return 1 - (along * Math.cos(angle) - up * Math.sin(angle)) / base;
    }

    /** The turn that brings the upper wheel centers from step to step + rise above the lower ones, by bisection. */
    private static double angle(double step, double rise) {
        double low = 0;
        double high = 1.2;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (WHEELBASE * Math.sin(middle) + step * Math.cos(middle) < step + rise) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The range of the height is tried with an override, which then counts and not the lift. */
    @Test
    void anOverriddenHeightWinsOverTheLift() {
        WrittenCar car = Cars.TWIN.without("car.load_cases[0].cg_height").with("""
                car.load_cases[0].axle_lift.raised: rear
                car.load_cases[0].axle_lift.rise: 600 mm
                car.load_cases[0].axle_lift.lower_axle: 540 kg
                """);
        assertThat(car.resolved("car.load_cases[0].cg_height", 0.5)
                        .car()
                        .heaviest()
                        .cgHeight())
                .isEqualTo(0.5);
    }
}
