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

/** By hand: the pedal of 145 mm gives 9.28 mm at the bearing. */
class ClutchOverTravelTest {
    private static final ClutchOverTravel RULE = new ClutchOverTravel();
    private static final TestCar CAR = TestCar.twin().withClutch();

    @Test
    void silentWithoutAClutch() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"11 mm, FINE, stop", "9 mm, STOP, ''", "9.4 mm, FINE, stop"})
    void holdsTheBearingAgainstTheCover(String most, State state, String variant) {
        Finding finding = only(RULE, CAR.with("clutch.cover.most_bearing_travel", most));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
        assertThat(found(finding)).isCloseTo(0.139 / 14.979, within(2e-5));
    }

    /** Stop 1 mm beyond free: 6 + 14.979 x 9 = 140.8 mm. */
    @Test
    void saysWhereTheStopBelongs() {
        assertThat(figure("stop", only(RULE, CAR))).isCloseTo(0.1408, within(4e-4));
    }

    /** A slave that ends before the plate is free leaves no place for a stop. */
    @Test
    void saysWhenNoStopHelps() {
        TestCar car = CAR.with("clutch.bearing.preload", "3 mm").with("clutch.cover.most_bearing_travel", "9 mm");
        assertThat(only(RULE, car).variant()).isEqualTo("no_stop");
        TestCar far = CAR.with("clutch.bearing.preload", "3 mm");
        assertThat(only(RULE, far).variant()).isEmpty();
    }
}
