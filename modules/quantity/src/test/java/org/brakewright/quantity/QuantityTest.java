package org.brakewright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantityTest {

    @Test
    void isMadeFromANumberAndAUnit() {
        Quantity push = Quantity.of(85, Unit.POUND_FORCE);
        // 85 x 4.4482216152605 N, NIST SP 811
        assertThat(push.si()).isCloseTo(378.0988373, within(1e-7));
        assertThat(push.written()).isEqualTo("85 lbf");
        assertThat(Quantity.ratio(0.4).written()).isEqualTo("0.4");
    }

    @Test
    void checksItselfAtBirth() {
        Optional<Unit> bar = Optional.of(Unit.BAR);
        assertThatThrownBy(() -> new Quantity(Double.NaN, 0, Dimension.PRESSURE, bar, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("si");
        assertThatThrownBy(() -> new Quantity(1, -1, Dimension.PRESSURE, bar, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("tolerance");
        assertThatThrownBy(() -> new Quantity(1, 0, Dimension.LENGTH, bar, ""))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("unit");
        assertThatThrownBy(() -> Quantity.of(1, Unit.BAR).in(Unit.INCH)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @EnumSource
    void everyDimensionHasUnitsThatMeasureIt(Dimension dimension) {
        assertThat(Unit.of(dimension)).isNotEmpty();
        assertThat(dimension.words()).matches("an? [a-z ]+");
        assertThat(dimension.likelyUnits())
                .allSatisfy(unit -> assertThat(unit.dimension()).isEqualTo(dimension))
                .hasSize(
                        dimension == Dimension.RATIO
                                ? 0
                                : Math.min(4, Unit.of(dimension).size()));
        assertThat(Preferred.US.unit(dimension).dimension()).isEqualTo(dimension);
        assertThat(Preferred.METRIC.unit(dimension).dimension()).isEqualTo(dimension);
    }

    /** Common practice of US and metric shops, no source. */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, INCH, MILLIMETRE",
        "FORCE, POUND_FORCE, NEWTON",
        "PRESSURE, PSI, BAR",
        "TORQUE, POUND_FORCE_FOOT, NEWTON_METRE",
        "SPEED, MILE_PER_HOUR, KILOMETRE_PER_HOUR",
        "MASS, POUND, KILOGRAM",
        "TEMPERATURE, FAHRENHEIT, CELSIUS",
        "ACCELERATION, FREE_FALL, FREE_FALL",
        "POWER, HORSEPOWER, KILOWATT"
    })
    void prefersTheUnitOfTheShop(Dimension dimension, Unit us, Unit metric) {
        assertThat(Preferred.US.unit(dimension)).isEqualTo(us);
        assertThat(Preferred.METRIC.unit(dimension)).isEqualTo(metric);
    }
}
