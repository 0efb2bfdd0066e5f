package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AllWheelsLockTest {
    private static final AllWheelsLock RULE = new AllWheelsLock();

    /** At 0.9 g the rear carries 0.5 - 0.18 of the weight and is the last to lock. */
    private static final double BY_HAND = ByHand.pushFor(0.9 * 0.32 * ByHand.WEIGHT / ByHand.REAR_PER_PASCAL);

    /** All four wheels with one push: Formula SAE 2019 T.5.1 (secondary source: standards 5.5). */
    @Test
    void tellsThePushThatLocksTheLastWheel() {
        Finding finding = only(RULE, student());
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding)).isCloseTo(BY_HAND, within(1e-6));
        assertThat(limitValue(finding)).isEqualTo(1335);
        assertThat(limit(finding).tag()).isEqualTo(Tag.SECONDARY);
        assertThat(limit(finding).whose()).contains("T.5.1");
    }

    /** By hand 446.556 N. */
    @ParameterizedTest
    @CsvSource({"446.6 N, FINE", "446.5 N, STOP"})
    void isHeldAgainstAPanicPush(String panic, State state) {
        assertThat(only(RULE, student().with("intent.panic_push", panic)).state())
                .isEqualTo(state);
    }

    @Test
    void saysWhenNoPushLocksThemAll() {
        Finding finding = only(RULE, TestCar.hopeless().answeringTo("student_competition"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("none");
        assertThat(finding.found()).isNull();
    }

    @Test
    void isSilentForACarThatAnswersToNone() {
        assertThat(TestCar.twin().answeringTo("un_r13h").judgedBy(RULE)).isEmpty();
    }

    private static TestCar student() {
        return TestCar.twin().answeringTo("student_competition");
    }
}
