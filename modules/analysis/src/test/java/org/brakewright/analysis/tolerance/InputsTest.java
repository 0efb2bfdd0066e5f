package org.brakewright.analysis.tolerance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.brakewright.analysis.Cars;
import org.brakewright.analysis.Leaves;
import org.brakewright.analysis.WrittenCar;
import org.brakewright.model.Given;
import org.brakewright.model.Givens;
import org.junit.jupiter.api.Test;

/** Which values are varied, between which ends. */
class InputsTest {
    @Test
    void everyQuantityOfABuildIsFound() {
        WrittenCar car = Cars.TANDEM.with("apply.rated_pressure: 100 bar");
        long leaves = Leaves.numbers(car.build()).stream()
                .filter(path -> path.endsWith(".quantity.si"))
                .count();
        assertThat(Givens.of(car.build()))
                .extracting(Given::path)
                .contains(
                        "car.wheelbase",
                        "car.load_cases[0].cg_height",
                        "front.pistons[0]",
                        "pedal.mount_stiffness",
                        "apply.rated_pressure",
                        "lines.rear.trapped_volume",
                        "fluid.free_air",
                        "intent.panic_push")
                .doesNotHaveDuplicates()
                .hasSize((int) leaves);
    }

    @Test
    void aPlusMinusIsEvenAndALedgersRangeHasItsPeakAtTheValue() {
        List<Input> inputs =
                inputs(Cars.TWIN.with("front.pad_friction: 0.40 ± 0.04").without("pedal.free_play"));
        assertThat(inputs).extracting(Input::path).containsExactly("front.pad_friction", "pedal.free_play");
        assertThat(inputs.getFirst().belief()).isEqualTo(Input.Belief.EVEN);
        assertThat(inputs.getFirst().low()).isCloseTo(0.36, within(1e-12));
        assertThat(inputs.getFirst().high()).isCloseTo(0.44, within(1e-12));
        // The ledger's own range, 1 to 6 mm with 3 mm assumed (Defaults).
        assertThat(inputs.getLast().belief()).isEqualTo(Input.Belief.PEAKED);
        assertThat(inputs.getLast().distribution().quantile(1)).isEqualTo(6e-3);
        assertThat(inputs.getLast().value()).isEqualTo(3e-3);
    }

    @Test
    void aGuessWithItsOwnPlusMinusCountsOnceAndOneWithoutTakesTheUsualRange() {
        List<Input> inputs =
                inputs(Cars.TWIN.assumed("front.pad_friction", "0.35 ± 0.05").assumed("rear.pad_friction", "0.35"));
        assertThat(inputs).extracting(Input::path).containsExactly("front.pad_friction", "rear.pad_friction");
        assertThat(inputs).extracting(Input::belief).containsExactly(Input.Belief.EVEN, Input.Belief.PEAKED);
    }

    @Test
    void wishesAndChecksAreNotVaried() {
        WrittenCar car = Cars.TWIN.with("intent.hard_stop: 0.9 ± 0.1 g").without("intent.most_effort");
        assertThat(inputs(car)).isEmpty();
    }

    @Test
    void aRangeStaysWithinWhatTheFileAllows() {
        Input air = inputs(Cars.TWIN.with("fluid.free_air: 0.001 ± 0.004")).getFirst();
        assertThat(air.low()).isZero();
        assertThat(air.high()).isEqualTo(0.005);
    }

    @Test
    void twoOfAKindAreToldApart() {
        List<Input> inputs = inputs(Cars.TWIN.with("""
                front.pistons[0]: 50 ± 0.1 mm
                car.load_cases[0].cg_height: 480 ± 10 mm
                """));
        assertThat(inputs).extracting(Input::title).anyMatch(title -> title.endsWith("(driver)"));
        assertThat(inputs).extracting(Input::title).anyMatch(title -> title.endsWith(" 1"));
    }

    @Test
    void aGuessWithoutAnyRangeIsNamed() {
        WrittenCar car = Cars.TWIN.assumed("car.wheelbase", "2400 mm");
        assertThat(Inputs.heldStill(car.build(), inputs(car))).containsExactly("the car: wheelbase");
    }

    private static List<Input> inputs(WrittenCar car) {
        return Inputs.of(car.build(), car.ledger());
    }
}
