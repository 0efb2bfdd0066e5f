package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.findings.Judgement.about;

import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckedOnCarTest {
    private static final CheckedOnCar RULE = new CheckedOnCar();

    @Test
    void cannotTellWhatNobodyLookedAt() {
        assertThat(TestCar.twin().judgedBy(RULE))
                .hasSize(6)
                .allSatisfy(finding -> assertThat(finding.state()).isEqualTo(State.CANNOT_TELL));
    }

    @ParameterizedTest
    @CsvSource({"pushrods_retained", "free_play_present", "pedal_returns", "no_leak", "pedal_holds", "brake_lights"})
    void takesTheWordOfWhoLooked(String check) {
        assertThat(about(check, RULE, TestCar.twin().with("checks." + check, "yes"))
                        .state())
                .isEqualTo(State.FINE);
        assertThat(about(check, RULE, TestCar.twin().with("checks." + check, "no"))
                        .state())
                .isEqualTo(State.STOP);
    }

    /** Without free play the ports stay covered and the brakes lock on when hot (needs, finding 6). */
    @Test
    void stopsWithoutFreePlayWhateverWasTicked() {
        TestCar car = TestCar.twin().with("pedal.free_play", "0 mm").with("checks.free_play_present", "yes");
        assertThat(about("free_play_present", RULE, car).state()).isEqualTo(State.STOP);
    }
}
