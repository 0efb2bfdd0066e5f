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

/** Row E6 of the check values: 113.3 N at the pad. */
class ClutchEffortTest {
    private static final ClutchEffort RULE = new ClutchEffort();
    private static final TestCar CAR = TestCar.twin().withClutch();

    @Test
    void silentWithoutAClutch() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"114 N, FINE", "113 N, CAUTION"})
    void holdsTheMostEffortAgainstTheAim(String aim, State state) {
        Finding finding = only(RULE, CAR.with("clutch.most_effort", aim));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(found(finding)).isCloseTo(113.345, within(1e-3));
        assertThat(figure("clamp", finding)).isCloseTo(6000, within(1e-6));
    }

    @Test
    void cannotTellBeyondTheMeasuredPoints() {
        TestCar car = CAR.without("clutch.cover.release_load")
                .with("clutch.cover.diaphragm.kind", "release_points")
                .with("clutch.cover.diaphragm.points[0].travel", "4 mm")
                .with("clutch.cover.diaphragm.points[0].force", "1500 N")
                .with("clutch.cover.diaphragm.points[1].travel", "9 mm")
                .with("clutch.cover.diaphragm.points[1].force", "1400 N");
        assertThat(only(RULE, car).state()).isEqualTo(State.CANNOT_TELL);
        assertThat(only(RULE, car.with("clutch.cover.diaphragm.points[1].travel", "10 mm"))
                        .state())
                .isEqualTo(State.FINE);
    }
}
