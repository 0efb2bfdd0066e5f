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

class LineBurstTest {
    private static final LineBurst RULE = new LineBurst();

    /** Barlow's 2 t S / D with the 290 MPa of SAE J527 (secondary source); the push spreads evenly over two equal masters. */
    @ParameterizedTest
    @CsvSource({"0.7, 1335, FINE, 4", "0.7, 2400, CAUTION, 4", "0.5, 2400, CAUTION, 4", "0.35, 2400, STOP, 2"})
    void holdsBurstAgainstTheHighestPressure(double wall, double push, State state, double limit) {
        Finding finding = only(
                RULE, Plumbed.car().with(Plumbed.TUBE + "wall", wall + " mm").with("intent.panic_push", push + " N"));
        double burst = 2 * wall * 290e6 / 4.7625;
        double bore = 0.7 * 25.4e-3;
        double highest = push * 5.5 * 0.85 / 2 / (Math.PI / 4 * bore * bore);
        assertThat(figure("burst", finding)).isCloseTo(burst, within(1.0));
        assertThat(figure("highest", finding)).isCloseTo(highest, within(highest * 1e-6));
        assertThat(found(finding)).isCloseTo(burst / highest, within(1e-5));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(limitValue(finding)).isEqualTo(limit);
    }

    @Test
    void isSilentWithoutLines() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
