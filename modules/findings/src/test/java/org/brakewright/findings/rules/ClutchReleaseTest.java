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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By hand: 6 mm of free play, then 14.979 mm of pad for 1 mm at the bearing; 15 um go at the fork. */
class ClutchReleaseTest {
    private static final ClutchRelease RULE = new ClutchRelease();
    private static final TestCar CAR = TestCar.twin().withClutch();

    @Test
    void silentWithoutAClutch() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }

    /** Free at 6 + 14.979 x 8 = 125.8 mm; the pedal of 145 mm gives 9.28 mm. */
    @ParameterizedTest
    @CsvSource({"145 mm, FINE", "138 mm, CAUTION", "120 mm, STOP"})
    void freesBeforeThePedalEnds(String pedal, State state) {
        Finding finding = only(RULE, CAR.with("clutch.pedal.travel_to_stop", pedal));
        double end = Double.parseDouble(pedal.replace(" mm", "")) / 1e3;
        assertThat(finding.state()).isEqualTo(state);
        assertThat(found(finding)).isCloseTo((end - 0.006) / 14.979, within(2e-5));
        assertThat(limitValue(finding)).isEqualTo(8e-3);
        assertThat(figure("free_pad", finding)).isCloseTo(0.1258, within(4e-4));
    }

    /** A master of 20 mm ends at 6 + 5.5 x 20 = 116 mm. */
    @Test
    void tellsWhenTheMasterEndsFirst() {
        Finding finding = only(RULE, CAR.with("clutch.master.stroke", "20 mm"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("master");
        assertThat(figure("pedal_end", finding)).isCloseTo(0.116, within(1e-4));
    }
}
