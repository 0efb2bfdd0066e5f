package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.analysis.balance.EfficiencyLine;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AdhesionEfficiencyTest {
    private static final AdhesionEfficiency RULE = new AdhesionEfficiency();

    /** Line of UN R13-H Annex 5, 3.1 (from memory); grips at z of the table in standards 3.4 (derived there). */
    @ParameterizedTest
    @CsvSource({"0.343, 0.20", "0.486, 0.30", "0.771, 0.50", "0.800, 0.52"})
    void followsTheLine(double grip, double deceleration) {
        assertThat(EfficiencyLine.needed(grip)).isCloseTo(deceleration, within(0.0005));
    }

    /** The line starts at z = 0.1 for k = 0.2; this car locks there at 0.2 x 0.5/(0.7 - 0.04) = 0.1515 g. */
    @Test
    void aRememberedLineIsNeverAPass() {
        Finding finding = only(RULE, un());
        assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(figure("grip", finding)).isCloseTo(0.2, within(1e-12));
        assertThat(found(finding)).isCloseTo(ByHand.frontLock(0.3, 0.2) * ByHand.G, within(1e-6));
        assertThat(limitValue(finding)).isCloseTo(0.1 * ByHand.G, within(1e-9));
        assertThat(limit(finding).tag()).isEqualTo(Tag.FROM_MEMORY);
        assertThat(limit(finding).whose()).isEqualTo("UN R13-H Annex 5, 3.1");
    }

    /** Rear pads of 0.05 leave the rear 0.05/0.89 of the force: on 0.6 of grip the front locks at 0.364 g, 0.38 is due. */
    @Test
    void tellsTheGripWhereItIsWorst() {
        Finding finding = only(RULE, un().with("rear.pad_friction", "0.05"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(figure("grip", finding)).isCloseTo(0.6, within(1e-12));
        assertThat(found(finding)).isCloseTo(ByHand.frontLock(0.05 / 0.89, 0.6) * ByHand.G, within(1e-6));
        assertThat(limitValue(finding)).isCloseTo(0.38 * ByHand.G, within(1e-9));
    }

    /** The line is first touched at k = 0.5: 0.25/(1 - Phi - 0.1) = 0.31 at a rear share of 0.09355, pads of 0.08669. */
    @ParameterizedTest
    @CsvSource({"0.0868, CANNOT_TELL", "0.0865, STOP"})
    void isExactAtTheLine(String friction, State state) {
        assertThat(only(RULE, un().with("rear.pad_friction", friction)).state()).isEqualTo(state);
    }

    @Test
    void isSilentForACarThatAnswersToNone() {
        assertThat(TestCar.twin().answeringTo("fmvss_135").judgedBy(RULE)).isEmpty();
    }

    @Test
    void isSilentWhereNoWheelLocks() {
        TestCar car = TestCar.hopeless().with("pedal.ratio", "1").with("pedal.efficiency", "0.3");
        assertThat(car.answeringTo("un_r13h").judgedBy(RULE)).isEmpty();
    }

    private static TestCar un() {
        return TestCar.twin().answeringTo("un_r13h");
    }
}
