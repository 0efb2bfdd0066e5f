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

/** By hand: 1 mm of wear at a finger ratio of 4 takes 4 mm; the slave has 34/2 = 17 mm in all. */
class ClutchWearRoomTest {
    private static final ClutchWearRoom RULE = new ClutchWearRoom();
    private static final TestCar CAR = TestCar.twin().withClutch();

    @Test
    void silentWithoutAClutch() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"12 mm, FINE, 1", "14 mm, CAUTION, -1"})
    void inContact(String preload, State state, double left) {
        Finding finding = only(RULE, CAR.with("clutch.bearing.preload", preload));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo("contact");
        assertThat(found(finding)).isCloseTo(left / 1e3, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"5 mm, FINE, 1", "3 mm, CAUTION, -1"})
    void standingOff(String gap, State state, double left) {
        TestCar car = CAR.without("clutch.bearing")
                .with("clutch.bearing.kind", "clearance")
                .with("clutch.bearing.gap", gap);
        Finding finding = only(RULE, car);
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo("gap");
        assertThat(found(finding)).isCloseTo(left / 1e3, within(1e-9));
        assertThat(figure("rise", finding)).isCloseTo(4e-3, within(1e-12));
    }
}
