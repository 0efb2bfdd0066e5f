package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** UN R35 by standards.md 7.1 (secondary source). */
class PedalSpacingTest {
    private static final PedalSpacing RULE = new PedalSpacing();

    @Test
    void padsAsFarApartAsTheRuleWantsThemAreFine() {
        assertThat(only(RULE, Footed.car()).state()).isEqualTo(State.FINE);
    }

    @Test
    void padsTooCloseOrTooFarAreACaution() {
        Finding close =
                about("throttle and brake (E)", RULE, Footed.car().with("footwell.throttle.pad.left", "195 mm"));
        assertThat(close.state()).isEqualTo(State.CAUTION);
        assertThat(found(close)).isCloseTo(0.045, within(1e-9));
        assertThat(limitValue(close)).isEqualTo(0.050);
        Finding far = about(
                "throttle and brake (E)",
                RULE,
                Footed.car().with("footwell.throttle.pad.left", "135 mm").with("footwell.right_wall", "90 mm"));
        assertThat(far.variant()).isEqualTo("wide");
        assertThat(limitValue(far)).isEqualTo(0.100);
    }

    @Test
    void wallsCountToo() {
        assertThat(about(
                                "clutch and the wall on its left (G)",
                                RULE,
                                Footed.car().with("footwell.left_wall", "490 mm"))
                        .state())
                .isEqualTo(State.CAUTION);
    }

    @Test
    void isSilentWithoutAFootwell() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
