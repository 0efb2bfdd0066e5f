package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

class LineAirTest {
    private static final LineAir RULE = new LineAir();

    @Test
    void aLineThatOnlyFallsFromItsMasterIsFine() {
        assertThat(only(RULE, Plumbed.car()).state()).isEqualTo(State.FINE);
    }

    /** The corner stands 100 mm above the master; its bend cuts a few mm off the top. */
    @Test
    void aLoopAboveTheMasterIsACaution() {
        Finding finding = only(RULE, Plumbed.point(Plumbed.car(), 1, "200 mm", "600 mm"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(found(finding)).isBetween(0.085, 0.1);
        assertThat(finding.subject()).isEqualTo(Plumbed.NAME);
    }

    /**
     * The caliper, 600 mm high and without a bleeder, is reached through a low bend. From plumb to a rise of 300 mm in 250
     * it turns by 90 degrees and the angle of that rise; its arc touches the plumb leg a set-back above the corner and hangs
     * one radius below: geometry.
     */
    @Test
    void aDeadEndIsAStop() {
        TestCar car = Plumbed.point(Plumbed.car(), 3, "450 mm", "600 mm")
                .with("plumbing.parts[1].at.up", "600 mm")
                .with("plumbing.parts[1].bleeder", "no");
        Finding finding = only(RULE, car);
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.subject()).isEqualTo("caliper");
        double setBack = 15 * Math.tan((Math.PI / 2 + Math.atan2(300, 250)) / 2);
        double lowest = 300 + setBack - 15;
        assertThat(found(finding)).isCloseTo((600 - lowest) / 1000, within(1e-4));
    }

    @Test
    void isSilentWithoutLines() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
