package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where valves go is common practice, no source; what arrives behind two of them is by hand. */
class ValvePlacementTest {
    private static final ValvePlacement RULE = new ValvePlacement();
    private static final TestCar VALVE = TestCar.tandem().withValve("20 bar", "0.4", false);
    private static final TestCar SERIES = VALVE.with("apply.second_proportioning_valve.knee", "20 bar")
            .with("apply.second_proportioning_valve.slope", "0.5");

    @ParameterizedTest
    @CsvSource({
        "front_rear, rear, FINE, ''",
        "front_rear, front, STOP, front",
        "diagonal, rear, CAUTION, diagonal",
        "diagonal, front, STOP, front"
    })
    void looksWhereTheValveSits(String split, String line, State state, String variant) {
        Finding finding = only(RULE, VALVE.with("apply.split", split).with("apply.proportioning_valve.line", line));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
    }

    /** Behind both, above both knees: 20 bar + 0.4 x 0.5 x (front - 20 bar). */
    @Test
    void twoInALineAddUp() {
        Finding second = about("second proportioning valve", RULE, SERIES.with("intent.hard_stop", "0.8 g"));
        assertThat(second.state()).isEqualTo(State.CAUTION);
        assertThat(second.variant()).isEqualTo("series_at_stop");
        assertThat(figure("front", second)).isGreaterThan(20e5);
        assertThat(figure("rear", second)).isCloseTo(20e5 + 0.2 * (figure("front", second) - 20e5), within(1.0));
    }

    @Test
    void aSecondInTheFrontLineStops() {
        Finding second = about(
                "second proportioning valve", RULE, SERIES.with("apply.second_proportioning_valve.line", "front"));
        assertThat(second.state()).isEqualTo(State.STOP);
    }

    @Test
    void aMeteringValveWaitsForDrums() {
        TestCar car = TestCar.tandem()
                .with("apply.metering_valve.opening", "5 bar")
                .with("apply.metering_valve.blend", "20 bar");
        assertThat(only(RULE, car).state()).isEqualTo(State.CAUTION);
        assertThat(only(RULE, car.withRearDrums("3/4 in")).state()).isEqualTo(State.FINE);
    }

    @Test
    void isSilentWithoutValves() {
        assertThat(TestCar.tandem().judgedBy(RULE)).isEmpty();
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
