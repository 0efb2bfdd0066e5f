package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.analysis.Analyse;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

class RodLengthTest {
    private static final RodLength RULE = new RodLength();

    /** Statics of a three-force bar: its arms share the push at any tilt. A turn is 1 mm of 64; brakes of 0.84 to 0.36. */
    @Test
    void aLongerRodTiltsASquareBarAndLeavesTheBalance() {
        Finding finding = only(RULE, TestCar.twin());
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(finding.variant()).isEmpty();
        assertThat(found(finding)).isCloseTo(0, within(1e-9));
        assertThat(figure("longer", finding)).isEqualTo(1e-3);
        assertThat(figure("turn", finding)).isCloseTo(forceShare(33.0 / 64) - forceShare(0.5), within(1e-9));
        assertThat(figure("tilt", finding)).isBetween(0.95 / 64, 1.0 / 64);
    }

    private static double forceShare(double pushShare) {
        return 0.84 * pushShare / (0.84 * pushShare + 0.36 * (1 - pushShare));
    }

    /** By the law of set-back pins a tilt of 1/64 moves the push by 12/64 of it: a fifth of a turn. */
    @Test
    void tellsThatARodDoesMoveTheBalanceOfABarWithSetBackPins() {
        Finding finding = only(RULE, TestCar.twin().with("apply.balance_bar.pin_set_back", "12 mm"));
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(finding.variant()).isEqualTo("moves");
        assertThat(found(finding) / figure("turn", finding)).isCloseTo(12.0 / 64, within(0.02));
    }

    @Test
    void isSilentWithoutABarWithoutAHardStopAndWhereOnlyJudgementsAreWanted() {
        assertThat(TestCar.tandem().judgedBy(RULE)).isEmpty();
        assertThat(TestCar.hopeless().judgedBy(RULE)).isEmpty();
        Facts facts = TestCar.twin().facts();
        assertThat(RULE.judge(new Facts(facts.build(), Analyse.forJudging(facts.build()))))
                .isEmpty();
    }
}
