package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.figure;
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

class ServiceStopTest {
    private static final ServiceStop RULE = new ServiceStop();
    private static final String UN = "UN R13-H";

    /** 6.43 m/s2 at no more than 500 N, UN R13-H Annex 3 and FMVSS 135 S7.5 (from memory: standards 1.2, 3.3). */
    @ParameterizedTest
    @CsvSource({"un_r13h, UN R13-H, UN R13-H Annex 3", "fmvss_135, FMVSS 135, FMVSS 135 S7.5"})
    void aRememberedFigureIsNeverAPass(String ruleSet, String subject, String clause) {
        Finding finding = about(subject, RULE, TestCar.twin().answeringTo(ruleSet));
        assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(finding.variant()).isEmpty();
        assertThat(found(finding)).isCloseTo(ByHand.push(6.43 / ByHand.G), within(1e-6));
        assertThat(figure("deceleration", finding)).isCloseTo(6.43, within(1e-12));
        assertThat(limitValue(finding)).isEqualTo(500);
        assertThat(limit(finding).tag()).isEqualTo(Tag.FROM_MEMORY);
        assertThat(limit(finding).whose()).startsWith(clause);
    }

    /** 2.9 m/s2 at no more than 885 N, NSW brake assessment manual 2013, p. 12 (read in the text: standards 5.1). */
    @Test
    void aFigureReadInTheTextIs() {
        Finding finding = only(RULE, TestCar.twin().answeringTo("state_assessment"));
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding)).isCloseTo(ByHand.push(2.9 / ByHand.G), within(1e-6));
        assertThat(figure("deceleration", finding)).isCloseTo(2.9, within(1e-12));
        assertThat(limitValue(finding)).isEqualTo(885);
        assertThat(limit(finding).tag()).isEqualTo(Tag.VERIFIED);
    }

    /** The push goes with 1/ratio: 500 N at 5.5 x 304.997/500 = 3.355. */
    @ParameterizedTest
    @CsvSource({"3.36, CANNOT_TELL", "3.35, STOP"})
    void stopsBeyondTheForceThatTheRuleAllows(String ratio, State state) {
        assertThat(about(UN, RULE, un().with("pedal.ratio", ratio)).state()).isEqualTo(state);
    }

    /** Bar 10 mm toward the front, grip 0.8: the front locks at 0.609 g = 5.97 m/s2. */
    @Test
    void stopsWhenAWheelLocksBefore() {
        TestCar car = un().with("apply.balance_bar.offset", "10 mm").with("car.grip", "0.8");
        Finding finding = about(UN, RULE, car);
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("locks");
        assertThat(figure("effort", finding)).isLessThan(500);
        assertThat(limitValue(finding)).isCloseTo(6.43, within(1e-12));
        assertThat(found(finding)).isCloseTo(ByHand.frontLock(ByHand.rearShare(10), 0.8) * ByHand.G, within(1e-6));
    }

    /** 6.43 m/s2 are 0.6557 g: on a grip of 0.6 no car gives it, on 0.66 this one's front locks before. */
    @ParameterizedTest
    @CsvSource({"0.6, CANNOT_TELL, slippery", "0.655, CANNOT_TELL, slippery", "0.66, STOP, locks"})
    void doesNotBlameTheCarForASlipperyRoad(String grip, State state, String variant) {
        Finding finding = about(UN, RULE, un().with("car.grip", grip));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
    }

    @Test
    void saysWhenNoPushBringsIt() {
        Finding finding = only(RULE, TestCar.hopeless().answeringTo("un_r13h"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("none");
        assertThat(finding.found()).isNull();
    }

    @Test
    void isSilentForACarThatAnswersToNone() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
        assertThat(TestCar.twin().answeringTo("student_competition").judgedBy(RULE))
                .isEmpty();
    }

    private static TestCar un() {
        return TestCar.twin().answeringTo("un_r13h");
    }
}
