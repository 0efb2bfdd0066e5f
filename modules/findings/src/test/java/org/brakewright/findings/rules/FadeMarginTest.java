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

class FadeMarginTest {
    private static final FadeMargin RULE = new FadeMargin();

    /** By hand: pads that lose a tenth at both ends leave nine tenths of the stop and take 1/0.9 of the push. */
    @ParameterizedTest
    @CsvSource({"0.9, FINE", "0.62, CAUTION", "0.5, STOP"})
    void asksForWhatIsLeft(double left, State state) {
        Finding finding =
                only(RULE, faded(left).with("intent.most_effort", "600 N").with("intent.panic_push", "2000 N"));
        assertThat(figure("left", finding)).isCloseTo(left, within(1e-6));
        assertThat(finding.state()).isEqualTo(state);
        if (state == State.STOP) {
            assertThat(limit(finding).tag()).isEqualTo(Tag.FROM_MEMORY);
            assertThat(found(finding)).isCloseTo(0.5, within(1e-6));
        } else {
            assertThat(found(finding)).isCloseTo(figure("cold", finding) / left, within(0.5));
            assertThat(limitValue(finding)).isEqualTo(600);
        }
    }

    /** Friction that stays is not to blame for a push that is too hard cold as well. */
    @Test
    void doesNotBlameHeatForWhatIsSoCold() {
        Finding finding = only(RULE, faded(1.0).with("intent.most_effort", "60 N"));
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(finding.variant()).isEqualTo("as_cold");
        assertThat(found(finding))
                .isCloseTo(figure("cold", finding), within(0.5))
                .isGreaterThan(60);
        assertThat(only(RULE, faded(0.98).with("intent.most_effort", "60 N")).state())
                .isEqualTo(State.CAUTION);
    }

    private static TestCar faded(double left) {
        TestCar front = HeatedCars.friction(HeatedCars.STOP, "front", String.valueOf(0.42 * left));
        return HeatedCars.friction(front, "rear", String.valueOf(0.36 * left));
    }

    @Test
    void stopsWhereNoLegIsLeft() {
        Finding finding = only(RULE, faded(0.3).with("intent.panic_push", "500 N"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("none");
    }

    @Test
    void saysWhenTheCurveIsTooShort() {
        Finding finding = only(RULE, faded(0.95).with("heat.front.friction_curve[1].temperature", "40 °C"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo("beyond");
    }

    @Test
    void knowsBothAxles() {
        Finding finding = only(RULE, faded(0.9));
        assertThat(figure("front", finding)).isGreaterThan(figure("rear", finding));
        assertThat(about("", RULE, faded(0.9))).isEqualTo(finding);
    }

    @Test
    void saysNothingWithoutASchedule() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
