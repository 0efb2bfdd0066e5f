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

/** Uniform wear by hand: 2 x 0.2 x 6000 N x 75 mm = 180 N m. */
class ClutchSlipTest {
    private static final ClutchSlip RULE = new ClutchSlip();
    private static final TestCar CAR = TestCar.twin().withClutch();

    @Test
    void silentWithoutAClutch() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"130, FINE", "150, CAUTION", "190, STOP"})
    void holdsTheTorqueAgainstTheEngine(double engine, State state) {
        Finding finding = only(RULE, CAR.with("clutch.engine_torque", engine + " N m"));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(found(finding)).isCloseTo(180 / engine, within(1e-9));
        assertThat(figure("torque", finding)).isCloseTo(180, within(1e-9));
    }

    @Test
    void cannotTellWithoutTheEngine() {
        Finding finding = only(RULE, CAR.without("clutch.engine_torque"));
        assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(finding.found()).isNull();
    }
}
