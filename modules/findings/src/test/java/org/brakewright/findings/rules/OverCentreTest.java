package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OverCentreTest {
    private static final OverCentre RULE = new OverCentre();

    /** 3 mm are free play. */
    @ParameterizedTest
    @CsvSource({"150, FINE", "215, FINE", "225, CAUTION"})
    void comparesTheRatioAtTheStopWithThatAtRest(int stopMm, State state) {
        Finding finding = only(RULE, Hung.pedal().with("pedal.travel_to_stop", stopMm + " mm"));
        double atStop = Hung.ratio(stopMm * 1e-3 - 0.003);
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEmpty();
        assertThat(found(finding)).isCloseTo(atStop / 5, within(1e-9));
        assertThat(figure("at_rest", finding)).isCloseTo(5, within(1e-12));
        assertThat(figure("at_stop", finding)).isCloseTo(atStop, within(1e-9));
        assertThat(limitValue(finding)).isEqualTo(1.5);
        assertThat(limit(finding).tag()).isEqualTo(Tag.ESTIMATE);
    }

    @Test
    void stopsAPedalThatPassesOverCentreBeforeItsStop() {
        Finding finding = only(RULE, Hung.pedal().with("pedal.travel_to_stop", "400 mm"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEmpty();
        assertThat(found(finding)).isCloseTo(0.003 + Hung.overCentre(), within(1e-6));
        assertThat(limitValue(finding)).isEqualTo(0.4);
    }

    /**
     * Calipers that spread by millimetres let the pedal run on while the ratio grows faster than the pressure: with a thrust in
     * proportion to the rod's travel the force is largest where d ln ratio/ds = 1/s.
     */
    @ParameterizedTest
    @CsvSource({"0.9, CAUTION", "1.1, STOP"})
    void tellsAPedalThatGivesWay(double panicOfWithstood, State state) {
        TestCar soft = Hung.pedal()
                .with("pedal.travel_to_stop", "350 mm")
                .with("front.caliper_spread", "0.6 mm/MPa")
                .with("rear.caliper_spread", "0.6 mm/MPa");
        double withstood = found(only(RULE, soft));
        Finding finding = only(RULE, soft.with("intent.panic_push", panicOfWithstood * withstood + " N"));
        assertThat(finding.variant()).isEqualTo("gives_way");
        assertThat(finding.state()).isEqualTo(state);
        assertThat(found(finding)).isEqualTo(withstood);
        assertThat(limitValue(finding)).isCloseTo(panicOfWithstood * withstood, within(1e-9));
        assertThat(figure("travel", finding)).isBetween(0.15, Hung.overCentre());
    }

    @Test
    void isSilentWithoutAMechanism() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
