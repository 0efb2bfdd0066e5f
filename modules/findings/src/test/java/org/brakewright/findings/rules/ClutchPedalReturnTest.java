package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A spring that pushes 60 N/mm helps with 140 N at 15 deg (docs/laws/over-centre-spring.md), more than the clutch gives back. */
class ClutchPedalReturnTest {
    private static final ClutchPedalReturn RULE = new ClutchPedalReturn();
    private static final TestCar CAR = TestCar.twin().withClutch();

    @Test
    void silentWithoutAClutch() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"12 N/mm, FINE", "60 N/mm, STOP"})
    void comesBack(String rate, State state) {
        Finding finding = only(
                RULE,
                CAR.with("clutch.pedal_spring.kind", "over_centre")
                        .with("clutch.pedal_spring.action", "pushes")
                        .with("clutch.pedal_spring.spring_rate", rate)
                        .with("clutch.pedal_spring.free_length", "95 mm")
                        .with("clutch.pedal_spring.pin_radius", "60 mm")
                        .with("clutch.pedal_spring.anchor_radius", "130 mm")
                        .with("clutch.pedal_spring.dead_centre", "79.55 mm")
                        .with("clutch.pedal_spring.pad_arm", "250 mm"));
        assertThat(finding.state()).isEqualTo(state);
    }

    /** Pedal up, 12 N and 0.1 N/mm over the 6 mm of free play. */
    @Test
    void tellsHowFarItIsHeld() {
        Finding finding = only(
                RULE, CAR.with("clutch.pedal_spring.kind", "return_spring").with("clutch.pedal_spring.force", "12 N"));
        assertThat(found(finding)).isCloseTo(12.6, within(1e-9));
    }
}
