package org.brakewright.analysis.stop;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.brakewright.analysis.balance.Lock.Axle;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a stop over time and the steady reckoning say of each other; each row follows from the definition of the words. */
class StopComparisonTest {

    private static Stop stop(@Nullable Double front, @Nullable Double rear, Axle reckoned, double push) {
        return new Stop(
                StopKind.PANIC,
                "driver",
                25,
                0.9,
                push,
                Stop.Ending.AT_REST,
                40,
                3.2,
                8.0,
                0.9,
                front == null ? null : front - 0.1,
                rear == null ? null : rear - 0.1,
                front,
                rear,
                reckoned,
                100.0,
                null,
                null,
                0,
                List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "0.5, , FRONT, 200, SAME",
        "0.5, , REAR, 200, DIFFERS",
        " , 0.5, REAR, 200, SAME",
        " , 0.5, FRONT, 200, DIFFERS",
        " , , FRONT, 200, DIFFERS",
        " , , FRONT, 50, SAME",
        "0.5, , FRONT, 50, DIFFERS",
        "0.5, , REAR, 103, TOO_CLOSE",
        "0.50, 0.55, FRONT, 200, SAME",
        "0.50, 0.55, REAR, 200, TOO_CLOSE",
        "0.55, 0.50, REAR, 200, SAME",
        "0.50, 0.90, BOTH, 200, TOO_CLOSE",
        "0.50, 0.55, BOTH, 200, SAME",
        "0.50, 0.90, REAR, 200, DIFFERS"
    })
    void comparesAxles(
            @Nullable Double front, @Nullable Double rear, Axle reckoned, double push, Stop.Comparison expected) {
        assertThat(stop(front, rear, reckoned, push).comparison()).isEqualTo(expected);
    }

    @Test
    void namesTheAxleWhoseTyresPassedTheirPeakFirst() {
        assertThat(stop(0.5, 0.9, Axle.REAR, 200).first()).isEqualTo(Axle.FRONT);
        assertThat(stop(0.9, 0.5, Axle.REAR, 200).first()).isEqualTo(Axle.REAR);
        assertThat(stop(0.50, 0.55, Axle.REAR, 200).first()).isEqualTo(Axle.BOTH);
    }
}
