package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import java.util.Map;
import org.brakewright.analysis.Analyse;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FadeTest {
    private static final Fade RULE = new Fade();

    /** Three quarters of the friction of 0.42 and 0.36 (the text of the car). */
    private static final TestCar HOT =
            TestCar.twin().with("front.pad_friction_hot", "0.315").with("rear.pad_friction_hot", "0.27");

    /** All brakes at 500 N and three quarters of their friction, by hand. */
    private static final double LEFT =
            0.75 * ByHand.pressure(500) * (ByHand.FRONT_PER_PASCAL + ByHand.REAR_PER_PASCAL) / 800;

    @Test
    void tellsWhatIsLeftAndTheEffort() {
        Finding finding = only(RULE, HOT.answeringTo("un_r13h"));
        assertThat(found(finding)).isCloseTo(LEFT, within(1e-6));
        assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(figure("share", finding)).isCloseTo(0.75, within(1e-9));
        assertThat(figure("push", finding)).isEqualTo(500);
        assertThat(limit(finding).tag()).isEqualTo(Tag.FROM_MEMORY);
    }

    /** UN R13-H Annex 3: 4.82 m/s2; FMVSS 135 S7.14: 4.88 m/s2 (from memory: standards 1.2 and 3.3). */
    @ParameterizedTest
    @CsvSource({
        "un_r13h, 4.82, 1.01, CANNOT_TELL",
        "un_r13h, 4.82, 0.99, STOP",
        "fmvss_135, 4.88, 1.01, CANNOT_TELL",
        "fmvss_135, 4.88, 0.99, STOP"
    })
    void isExactAtTheLimit(String ruleSet, double asked, double times, State state) {
        double ratio = 5.5 * asked / LEFT * times;
        Finding finding = only(RULE, gentle(HOT).answeringTo(ruleSet).with("pedal.ratio", String.valueOf(ratio)));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(limitValue(finding)).isEqualTo(asked);
    }

    /** A hard stop that a leg gives even then. */
    private static TestCar gentle(TestCar car) {
        return car.with("intent.hard_stop", "0.5 g");
    }

    @ParameterizedTest
    @CsvSource({"0.61, CANNOT_TELL, ''", "0.59, STOP, share"})
    void asksForSixTenthsOfTheColdForce(double share, State state, String variant) {
        Finding finding = only(
                RULE,
                HOT.answeringTo("un_r13h")
                        .with("intent.hard_stop", "0.6 g")
                        .with("front.pad_friction_hot", String.valueOf(0.42 * share))
                        .with("rear.pad_friction_hot", String.valueOf(0.36 * share)));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
    }

    /** 0.5 g of 800 kg takes that much of the 500 N; no rule set that asks is chosen. */
    @Test
    void withoutARuleALegIsTheLimit() {
        Finding finding = only(RULE, gentle(HOT));
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding)).isCloseTo(0.5 * ByHand.G / LEFT * 500, within(1e-6));
        assertThat(limitValue(finding)).isEqualTo(1335);
    }

    /** 1.5 g is more than the grip gives. */
    @Test
    void saysThatNoLegGivesTheHardStop() {
        Finding finding = only(RULE, HOT.with("intent.hard_stop", "1.5 g"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo("leg");
    }

    @Test
    void anAssumedFallIsNoStop() {
        Facts facts = HOT.answeringTo("un_r13h").with("pedal.ratio", "2.5").facts();
        assertThat(RULE.judge(facts).getFirst().state()).isEqualTo(State.STOP);
        Facts assumed = new Facts(facts.build(), facts.analysis(), Map.of("front.pad_friction_hot", Tag.ESTIMATE));
        assertThat(RULE.judge(assumed).getFirst().state()).isEqualTo(State.CAUTION);
        assertThat(RULE.judge(assumed).getFirst().variant()).isEqualTo("assumed");
    }

    @Test
    void isSilentInTrials() {
        Facts facts = HOT.facts();
        assertThat(RULE.judge(new Facts(facts.build(), Analyse.forJudging(facts.build()))))
                .isEmpty();
    }
}
