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

/** By hand: the bearing goes 9.28 mm ahead. */
class ClutchSlaveStrokeTest {
    private static final ClutchSlaveStroke RULE = new ClutchSlaveStroke();
    private static final TestCar CAR = TestCar.twin().withClutch();

    @Test
    void silentWithoutAClutch() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"12 mm, FINE, ''", "10 mm, CAUTION, stop", "9.2 mm, STOP, stop", "5 mm, STOP, ''"})
    void holdsTheSlaveAgainstItsStroke(String preload, State state, String variant) {
        Finding finding = only(RULE, CAR.with("clutch.bearing.preload", preload));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
        double ahead = Double.parseDouble(preload.replace(" mm", "")) / 1e3;
        assertThat(found(finding)).isCloseTo(ahead - 0.139 / 14.979, within(2e-5));
    }
}
