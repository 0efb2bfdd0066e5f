package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
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

class FrontFirstTest {
    private static final FrontFirst RULE = new FrontFirst();

    /** z 0.15 to 0.80: UN R13-H Annex 5, 3.1 and FMVSS 135 S7.2 (from memory: standards 1.2, 3.4). */
    @Test
    void aRememberedRangeIsNeverAPass() {
        TestCar car = TestCar.twin().answeringTo("un_r13h", "fmvss_135");
        assertThat(car.judgedBy(RULE)).hasSize(2).allSatisfy(finding -> {
            assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
            assertThat(finding.found()).isNull();
            assertThat(limitValue(finding)).isCloseTo(0.80 * ByHand.G, within(1e-12));
            assertThat(limit(finding).tag()).isEqualTo(Tag.FROM_MEMORY);
        });
        assertThat(limit(about("FMVSS 135", RULE, car)).whose()).contains("S7.2");
    }

    /** Rear friction f takes f/(0.84 + f) of the force; (0.5 - that)/0.2 is 0.80 at f = 0.4327. */
    @ParameterizedTest
    @CsvSource({"0.432, CANNOT_TELL", "0.434, STOP", "0.48, STOP"})
    void looksAtTheWholeRange(double friction, State state) {
        Finding finding = only(RULE, un().with("rear.pad_friction", Double.toString(friction)));
        assertThat(finding.state()).isEqualTo(state);
        if (state == State.STOP) {
            double critical = ByHand.critical(friction / (0.84 + friction));
            assertThat(found(finding)).isCloseTo(critical * ByHand.G, within(1e-5));
        }
    }

    /** A stretch from the first touch to 0.4 g enters the range at its lower end. */
    @Test
    void catchesARearThatComesFirstEarly() {
        Finding finding = only(RULE, un().with("front.threshold_pressure", "10 bar"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(found(finding)).isCloseTo(0.15 * ByHand.G, within(1e-9));
    }

    /** At 5 bar it ends at 0.139 g and comes again at 0.861 g: both outside the range. */
    @Test
    void leavesWhatLiesOutsideTheRange() {
        assertThat(ByHand.rearFirstUpTo(5e5)).isLessThan(0.15);
        assertThat(ByHand.rearFirstAgainFrom(5e5)).isGreaterThan(0.80);
        assertThat(only(RULE, un().with("front.threshold_pressure", "5 bar")).state())
                .isEqualTo(State.CANNOT_TELL);
    }

    @Test
    void looksAtEveryLoadCase() {
        Finding finding = only(RULE, un().alsoLoaded("no fuel", 400, 300, 480));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(found(finding)).isCloseTo((3.0 / 7 - 0.3) / 0.2 * ByHand.G, within(1e-5));
    }

    @Test
    void isSilentForACarThatAnswersToNone() {
        assertThat(TestCar.twin().answeringTo("state_assessment").judgedBy(RULE))
                .isEmpty();
    }

    private static TestCar un() {
        return TestCar.twin().answeringTo("un_r13h");
    }
}
