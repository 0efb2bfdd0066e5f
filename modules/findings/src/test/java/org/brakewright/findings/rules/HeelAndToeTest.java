package org.brakewright.findings.rules;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.analysis.footwell.FootwellState.HeelToeState;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** Held to analysis, which has the geometry in its tests. */
class HeelAndToeTest {
    private static final HeelAndToe RULE = new HeelAndToe();

    private static TestCar wanted() {
        return Footed.car().with("footwell.driver", "men_50").with("footwell.heel_and_toe", "yes");
    }

    @Test
    void aFootTooNarrowForBothIsTold() {
        TestCar far = wanted().with("footwell.driver", "women_5").with("footwell.shoe", "bare");
        Finding finding = only(RULE, far);
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo("aside");
        // 55 mm of gap and 20 mm of each pad; a bare foot of 80 mm.
        assertThat(limitValue(finding)).isCloseTo(0.095, within(1e-9));
        assertThat(figure("shift", finding)).isCloseTo(0.015, within(1e-9));
    }

    @Test
    void theToldShiftForwardOrBackCures() {
        HeelToeState now = requireNonNull(
                requireNonNull(wanted().facts().analysis().footwell()).heelToe());
        Finding high = at(-200 + 1000 * (now.stepM() - now.highestM()) - 5);
        assertThat(high.variant()).isEqualTo("high");
        assertThat(figure("shift", high)).isCloseTo(0.005, within(1e-6));
        assertThat(limitValue(high)).isCloseTo(now.highestM(), within(1e-9));
        assertThat(at(-200 + 1000 * (now.stepM() - now.highestM()) + 1).state()).isEqualTo(State.CANNOT_TELL);
        Finding deep = at(-200 + 1000 * (now.stepM() - now.lowestM()) + 5);
        assertThat(deep.variant()).isEqualTo("deep");
        assertThat(figure("shift", deep)).isCloseTo(0.005, within(1e-6));
    }

    private static Finding at(double throttleForward) {
        return only(RULE, wanted().with("footwell.throttle.pad.forward", throttleForward + " mm"));
    }

    @Test
    void isSilentWhenNobodyWantsIt() {
        assertThat(Footed.car().judgedBy(RULE)).isEmpty();
    }

    @Test
    void isSilentWithoutAFootwell() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
