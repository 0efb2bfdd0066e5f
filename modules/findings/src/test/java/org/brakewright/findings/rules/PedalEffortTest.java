package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
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

class PedalEffortTest {
    private static final PedalEffort RULE = new PedalEffort();

    /** 0.9 g of 800 kg by hand: 418.6 N. */
    @Test
    void tellsTheEffortOfTheHardStop() {
        Finding finding = only(RULE, TestCar.twin());
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding)).isCloseTo(ByHand.push(0.9), within(1e-6));
        assertThat(figure("front_pressure", finding)).isCloseTo(ByHand.pressure(found(finding)), within(1.0));
        assertThat(figure("hard_stop", finding)).isCloseTo(0.9 * ByHand.G, within(1e-9));
        assertThat(limitValue(finding)).isEqualTo(445);
        assertThat(limit(finding).tag()).isEqualTo(Tag.BUILDERS_CHOICE);
    }

    /** The effort by hand is 418.646 N. */
    @ParameterizedTest
    @CsvSource({"418.65 N, FINE", "418.64 N, CAUTION", "94 lbf, CAUTION", "95 lbf, FINE"})
    void isHeldAgainstTheBuildersAim(String aim, State state) {
        assertThat(only(RULE, TestCar.twin().with("intent.most_effort", aim)).state())
                .isEqualTo(state);
    }

    @ParameterizedTest
    @CsvSource({"418.65 N, CAUTION", "418.64 N, STOP"})
    void stopsWhereNoLegGivesIt(String panic, State state) {
        TestCar car = TestCar.twin().with("intent.most_effort", "300 N").with("intent.panic_push", panic);
        Finding finding = only(RULE, car);
        assertThat(finding.state()).isEqualTo(state);
        assertThat(limit(finding).tag()).isEqualTo(state == State.STOP ? Tag.COMMON_PRACTICE : Tag.BUILDERS_CHOICE);
    }

    @Test
    void saysWhenNoPushBringsTheHardStop() {
        Finding finding = only(RULE, TestCar.hopeless());
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("none");
        assertThat(finding.found()).isNull();
        assertThat(limitValue(finding)).isEqualTo(1335);
    }

    /** Force goes with mass: 1200 kg take one and a half times the push of 800 kg. */
    @Test
    void judgesTheHeaviestLoadCase() {
        Finding finding = only(RULE, TestCar.twin().alsoLoaded("laden", 500, 700, 520));
        assertThat(found(finding)).isCloseTo(1.5 * ByHand.push(0.9), within(1e-6));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
    }
}
