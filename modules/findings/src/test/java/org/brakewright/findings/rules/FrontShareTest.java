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

class FrontShareTest {
    private static final FrontShare RULE = new FrontShare();

    /** 0.5/(1 - 0.3 - 0.9 x 0.2) = 0.9615; ideal front share at 0.9 g is 0.5 + 0.2 x 0.9. */
    @Test
    void tellsHowMuchGripIsUsed() {
        Finding finding = only(RULE, TestCar.twin());
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding)).isCloseTo(ByHand.frontLock(0.3, 0.9) / 0.9, within(1e-9));
        assertThat(figure("front_share", finding)).isCloseTo(TestCar.FRONT_SHARE, within(1e-9));
        assertThat(figure("ideal_front_share", finding)).isCloseTo(0.68, within(1e-9));
        assertThat(figure("lock", finding)).isCloseTo(ByHand.frontLock(0.3, 0.9) * ByHand.G, within(1e-6));
        assertThat(limitValue(finding)).isEqualTo(0.80);
        assertThat(limit(finding).tag()).isEqualTo(Tag.ESTIMATE);
    }

    /** The efficiency is 0.80 where the rear has 0.195 of the force, with the bar 8.889 mm toward the front. */
    @ParameterizedTest
    @CsvSource({"8.8 mm, FINE", "8.95 mm, CAUTION"})
    void warnsOfATooStrongFront(String offset, State state) {
        Finding finding = only(RULE, TestCar.twin().with("apply.balance_bar.offset", offset));
        assertThat(finding.state()).isEqualTo(state);
    }

    /** Rear-limited: 0.5/(0.5 + 0.18) with a rear share of 0.5: 0.735. */
    @Test
    void warnsOfATooStrongRear() {
        Finding finding = only(RULE, TestCar.twin().with("rear.pad_friction", "0.84"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(found(finding)).isCloseTo(0.5 / (0.5 + 0.18), within(1e-9));
    }

    /** A load case of 400/300 kg is rear-limited: (3/7)/(0.3 + 0.18) = 0.893, worse than 0.9615. */
    @Test
    void takesTheWorstLoadCase() {
        Finding finding = only(RULE, TestCar.twin().alsoLoaded("no fuel", 400, 300, 480));
        assertThat(found(finding)).isCloseTo(3.0 / 7 / 0.48, within(1e-9));
    }

    @Test
    void isSilentWithoutAHardStop() {
        assertThat(TestCar.hopeless().judgedBy(RULE)).isEmpty();
    }
}
