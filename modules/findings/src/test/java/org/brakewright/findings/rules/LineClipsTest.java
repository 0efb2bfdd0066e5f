package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** 300 mm: NSW brake assessment manual 2013, p. 23. */
class LineClipsTest {
    private static final LineClips RULE = new LineClips();

    @Test
    void theLongestWayIsHeldAgainstThreeHundredMillimetres() {
        TestCar one = Plumbed.car().with(Plumbed.TUBE + "clips[0]", "300 mm");
        Finding finding = only(RULE, one);
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(found(finding)).isCloseTo((Plumbed.DEVELOPED - 300) / 1000, within(1e-9));
        Finding held = only(RULE, one.with(Plumbed.TUBE + "clips[1]", "400 mm"));
        assertThat(held.state()).isEqualTo(State.FINE);
        assertThat(found(held)).isCloseTo(0.3, within(1e-12));
    }

    @Test
    void asksWhereClipsAreWhenNobodyTold() {
        Finding finding = only(RULE, Plumbed.car());
        assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(found(finding)).isCloseTo(Plumbed.DEVELOPED / 1000, within(1e-9));
    }

    @Test
    void isSilentWithoutLines() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
