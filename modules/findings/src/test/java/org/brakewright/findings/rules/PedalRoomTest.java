package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

/** 10 mm of room is common practice without a source; the pad's end follows by trigonometry from an arm of 250 mm. */
class PedalRoomTest {
    private static final PedalRoom RULE = new PedalRoom();

    /** Most forward that the brake gets: its lower corner on an arm of 275 mm, tilted by 150/250 rad, and half its thickness. */
    private static final double FOREMOST = -200 + 275 * Math.sin(150.0 / 250) + 3;

    @Test
    void whatThePedalTouchesIsAStop() {
        Finding finding = only(RULE, Footed.wall(FOREMOST - 20));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.subject()).isEqualTo("brake pedal and wall");
        // Away to either side of the wall, which is 20 mm broad in the middle of a pad of 60 mm.
        assertThat(figure("shift", finding)).isCloseTo(0.030 + 0.003 + 0.010 + 0.010, within(1e-9));
    }

    @Test
    void littleRoomIsACautionAndEnoughIsFine() {
        Finding tight = only(RULE, Footed.wall(FOREMOST + 6));
        assertThat(tight.state()).isEqualTo(State.CAUTION);
        assertThat(found(tight)).isCloseTo(0.006, within(2e-4));
        assertThat(limitValue(tight)).isEqualTo(0.010);
        assertThat(only(RULE, Footed.wall(FOREMOST + 14)).state()).isEqualTo(State.FINE);
    }

    @Test
    void isSilentWithoutAFootwell() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
