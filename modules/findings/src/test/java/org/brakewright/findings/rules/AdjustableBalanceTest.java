package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AdjustableBalanceTest {
    private static final AdjustableBalance RULE = new AdjustableBalance();

    /** An approval scheme wants the bar mechanically disabled and labelled (secondary source: standards 5.4). */
    @ParameterizedTest
    @CsvSource({"road, no, CAUTION", "road, yes, FINE", "road_and_track, no, CAUTION", "road_and_track, yes, FINE"})
    void asksForALockedBarOnTheRoad(String use, String locked, State state) {
        TestCar car = TestCar.twin().with("intent.use", use).with("apply.balance_bar.locked_for_road", locked);
        Finding finding = only(RULE, car);
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.subject()).isEqualTo("balance bar");
    }

    @Test
    void cannotTellWhenNobodySaid() {
        assertThat(only(RULE, TestCar.twin()).state()).isEqualTo(State.CANNOT_TELL);
    }

    @Test
    void isSilentOnTheTrack() {
        TestCar car = TestCar.twin().with("intent.use", "track").with("apply.balance_bar.locked_for_road", "no");
        assertThat(car.judgedBy(RULE)).isEmpty();
    }

    @Test
    void looksAtAnAdjustableValve() {
        Finding finding = only(RULE, TestCar.tandem().withValve("30 bar", "0.3", true));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.subject()).isEqualTo("proportioning valve");
    }

    @Test
    void looksAtBarAndValve() {
        TestCar car = TestCar.twin().withValve("30 bar", "0.3", true).with("apply.balance_bar.locked_for_road", "yes");
        assertThat(car.judgedBy(RULE))
                .extracting(Finding::subject)
                .containsExactly("balance bar", "proportioning valve");
    }

    @Test
    void isSilentWhereNothingCanBeAdjusted() {
        assertThat(TestCar.tandem().judgedBy(RULE)).isEmpty();
        assertThat(TestCar.tandem().withValve("30 bar", "0.3", false).judgedBy(RULE))
                .isEmpty();
    }
}
