package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

class LineStraightsTest {
    private static final LineStraights RULE = new LineStraights();

    @Test
    void longEnoughIsFine() {
        assertThat(only(RULE, Plumbed.car()).state()).isEqualTo(State.FINE);
    }

    /** The first leg of 200 mm less a set-back of 15 mm leaves 185 mm: geometry of a quarter bend. */
    @Test
    void tooShortForTheBenderIsAStop() {
        assertThat(only(RULE, Plumbed.car().with("plumbing.bender.first_grip", "184 mm"))
                        .state())
                .isEqualTo(State.FINE);
        Finding finding = only(RULE, Plumbed.car().with("plumbing.bender.first_grip", "190 mm"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEmpty();
        assertThat(found(finding)).isCloseTo(0.185, within(1e-12));
        assertThat(limitValue(finding)).isCloseTo(0.190, within(1e-12));
    }

    @Test
    void tooShortForTheNutIsTold() {
        Finding finding = only(RULE, Plumbed.car().with("plumbing.nut_straight", "190 mm"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("nut");
    }

    @Test
    void isSilentWithoutLines() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
