package org.brakewright.analysis.reservoir;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.brakewright.analysis.Cars;
import org.brakewright.analysis.WrittenCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A column of 1,070 kg/m3 under 9.80665 m/s2 presses with 10.493 kPa a metre (rho g h, any textbook of hydrostatics). */
class DrainBacksTest {
    private static DrainBack front(WrittenCar car) {
        return car.analysis().drainBack().getFirst();
    }

    @ParameterizedTest
    @CsvSource({"-500 mm, 5246.6", "-1.2 m, 12591.7", "0 mm, 0", "300 mm, 0"})
    void fluidPressesBackOnlyWhereTheReservoirIsLower(String level, double head) {
        assertThat(front(Cars.TWIN.with("lines.front.level_above_brakes: " + level))
                        .headPa())
                .isCloseTo(head, withinPercentage(1e-3));
    }

    /** 2 psi is 13.79 kPa: 1.31 m of that fluid. */
    @ParameterizedTest
    @CsvSource({"-1.30 m, true", "-1.33 m, false"})
    void twoPsiHoldAMetreAndAThird(String level, boolean holds) {
        WrittenCar car =
                Cars.TWIN.with("lines.front.level_above_brakes: " + level).with("lines.front.residual_valve: 2 psi");
        assertThat(front(car).holds()).isEqualTo(holds);
    }

    @Test
    void anOpenLineHoldsNothing() {
        assertThat(front(Cars.TWIN.with("lines.front.level_above_brakes: -100 mm"))
                        .holds())
                .isFalse();
        assertThat(front(Cars.TWIN.with("lines.front.level_above_brakes: 100 mm"))
                        .holds())
                .isTrue();
    }

    /** 0.7 bar on pistons of 50 mm, two faces, two wheels, friction 0.4, 120 over 300 mm: 87.96 N at the road. */
    @Test
    void pressureThatIsKeptDrags() {
        WrittenCar car = Cars.TWIN.with("lines.front.residual_valve: 0.7 bar");
        assertThat(front(car).dragForceN())
                .isCloseTo(0.7e5 * Math.PI / 4 * 0.05 * 0.05 * 4 * 0.4 * 0.12 / 0.3, withinPercentage(1e-9));
        assertThat(front(car.with("front.threshold_pressure: 1 bar")).dragForceN())
                .isZero();
    }

    @Test
    void whatNobodyMeasuredIsNotKnown() {
        assertThat(front(Cars.TWIN).headPa()).isNull();
        assertThat(front(Cars.TWIN).holds()).isNull();
    }
}
