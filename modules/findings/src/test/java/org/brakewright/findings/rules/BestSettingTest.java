package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;

import java.util.List;
import org.brakewright.analysis.Analyse;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.resolved.ResolvedBuild;
import org.junit.jupiter.api.Test;

/** A bar of 1 mm a turn, 10 mm either way; the numbers themselves are held by the tests of the settings. */
class BestSettingTest {
    private static final BestSetting RULE = new BestSetting();

    private static List<Finding> judged(TestCar car) {
        ResolvedBuild build = car.facts().build();
        return RULE.judge(new Facts(build, Analyse.withAdvice(build)));
    }

    @Test
    void asksForTurnsTowardTheFrontWhereTheRearLocksFirst() {
        Finding finding =
                judged(TestCar.twin().with("apply.balance_bar.offset", "-9 mm")).getFirst();
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo("front");
        assertThat(figure("present_margin", finding)).isNegative();
        assertThat(figure("best_margin", finding)).isPositive();
        double turns = found(finding);
        String offset = (-9 + turns) + " mm";
        Finding then =
                judged(TestCar.twin().with("apply.balance_bar.offset", offset)).getFirst();
        assertThat(then.state()).isEqualTo(State.FINE);
        assertThat(then.variant()).isEqualTo("stay");
    }

    @Test
    void asksForTurnsTowardTheRearWhereGripIsGivenAway() {
        Finding finding =
                judged(TestCar.twin().with("apply.balance_bar.offset", "10 mm")).getFirst();
        assertThat(finding.variant()).isEqualTo("rear");
        assertThat(figure("best_margin", finding)).isGreaterThan(figure("present_margin", finding));
    }

    @Test
    void saysWhenNoSettingSatisfiesEveryCase() {
        Finding finding =
                judged(TestCar.twin().with("rear.pistons[0]", "90 mm")).getFirst();
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).startsWith("none_");
    }

    @Test
    void isSilentWhereNothingCanBeSet() {
        assertThat(judged(TestCar.tandem())).isEmpty();
        assertThat(RULE.judge(TestCar.twin().facts())).isEmpty();
    }
}
