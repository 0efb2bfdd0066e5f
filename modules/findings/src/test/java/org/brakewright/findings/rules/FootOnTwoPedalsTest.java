package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limitValue;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** A foot in the middle of a pad; breadths of standards.md 7.2: 85 mm and 10 mm of shoe. */
class FootOnTwoPedalsTest {
    private static final FootOnTwoPedals RULE = new FootOnTwoPedals();

    @Test
    void aFootThatStaysOnItsPadIsFine() {
        Finding finding = about("brake and throttle", RULE, Footed.car());
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding)).isCloseTo((0.095 - 0.060) / 2, within(1e-9));
        assertThat(limitValue(finding)).isCloseTo(0.055, within(1e-9));
    }

    @Test
    void aBroadFootOnANarrowPadPressesBoth() {
        TestCar narrow = Footed.car()
                .with("footwell.driver", "men_95")
                .with("footwell.shoe", "boots")
                .with("footwell.throttle.breadth", "20 mm");
        Finding finding = about("brake and throttle", RULE, narrow.with("footwell.throttle.pad.left", "220 mm"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(found(finding)).isCloseTo((0.140 - 0.020) / 2, within(1e-9));
        assertThat(figure("shift", finding)).isCloseTo(0.060 - (0.300 - 0.220 - 0.040), within(1e-9));
    }

    /** The hard stop moves the brake by some 30 mm; a throttle 60 mm further forward stays 10 mm and more out of the way. */
    @Test
    void aThrottleThatLiesDeeperIsNotPressed() {
        TestCar broad = Footed.car()
                .with("footwell.shoe", "boots")
                .with("footwell.driver", "men_95")
                .with("footwell.throttle.pad.left", "235 mm");
        assertThat(about("brake and throttle", RULE, broad).state()).isEqualTo(State.CAUTION);
        assertThat(about("brake and throttle", RULE, broad.with("footwell.throttle.pad.forward", "-100 mm"))
                        .state())
                .isEqualTo(State.FINE);
    }

    @Test
    void isSilentWithoutAFootwell() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
