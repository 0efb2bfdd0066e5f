package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineClearanceTest {
    private static final LineClearance RULE = new LineClearance();

    /** 10 mm to a wheel: NSW brake assessment manual 2013, p. 23. 75 mm to heat, 10 mm to what moves: common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "wheel, 107.6, FINE",
        "wheel, 107.7, STOP",
        "hot, 42.6, FINE",
        "hot, 42.7, CAUTION",
        "moving, 107.6, FINE",
        "moving, 107.7, CAUTION"
    })
    void holdsTheGapAgainstWhatItIsNearTo(String near, double radius, State state) {
        Finding finding = only(RULE, Plumbed.ball(Plumbed.car(), near, radius + " mm"));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(near);
        assertThat(finding.subject()).isEqualTo("front tube beside ball");
        // The ball's middle lies 120 mm below the last leg, half a tube of 3/16 in is 2.38125 mm.
        assertThat(found(finding)).isCloseTo((120 - radius - 2.38125) / 1000, within(1e-9));
        // The nearest place lies in the middle of the last leg, 125 mm before its end; bends are followed as chords.
        assertThat(figure("along", finding)).isCloseTo((Plumbed.DEVELOPED - 125) / 1000, within(1e-4));
    }

    @Test
    void isSilentAboutWhatIsFixed() {
        assertThat(Plumbed.ball(Plumbed.car(), "fixed", "117 mm").judgedBy(RULE))
                .isEmpty();
    }

    @Test
    void isSilentWithoutLines() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
