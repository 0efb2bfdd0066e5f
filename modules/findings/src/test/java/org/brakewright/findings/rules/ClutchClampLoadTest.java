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

/** 1500 N at a finger ratio of 4 tell of 6000 N. */
class ClutchClampLoadTest {
    private static final ClutchClampLoad RULE = new ClutchClampLoad();
    private static final TestCar CAR = TestCar.twin().withClutch();

    @Test
    void silentWithoutAClutch() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }

    @Test
    void silentWithoutAClampLoad() {
        assertThat(CAR.judgedBy(RULE)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"6400, FINE", "5000, CAUTION", "7500, CAUTION"})
    void comparesBoth(double given, State state) {
        Finding finding = only(RULE, CAR.with("clutch.cover.clamp_load", given + " N"));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(found(finding)).isCloseTo(Math.abs(6000 / given - 1), within(1e-9));
    }
}
