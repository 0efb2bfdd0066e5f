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

class DrumSelfLockTest {
    private static final DrumSelfLock RULE = new DrumSelfLock();

    /**
     * By hand, row C1: N = 125 (2 pi/3 / 2 + sin 60 / 4) = 157.964 mm and G = 150 x 1.5 - 62.5 x 0.75 = 178.125 mm per unit of
     * pressure, so that the leading shoe locks from 0.88682 on; over 1.3 that is 0.6822.
     */
    @ParameterizedTest
    @CsvSource({"0.28, FINE", "0.68, FINE", "0.685, CAUTION", "0.72, CAUTION", "0.89, STOP"})
    void comparesFrictionWithTheGeometry(String friction, State state) {
        Finding finding = only(RULE, TestCar.tandem().withRearShoes("leading_trailing", friction));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.subject()).isEqualTo("rear");
        assertThat(found(finding)).isEqualTo(Double.parseDouble(friction));
        assertThat(limitValue(finding)).isCloseTo(157.964 / 178.125, within(1e-5));
        assertThat(limit(finding).tag()).isEqualTo(Tag.DERIVED);
        assertThat(figure("margin", finding))
                .isCloseTo(157.964 / 178.125 / Double.parseDouble(friction) - 1, within(1e-4));
    }

    /** Two leading shoes of row C1 have 2 x 0.841284 at 0.28, so 2 x 2.0558 x 0.82/(1 - 0.82/0.88682) = 45 at 0.82. */
    @Test
    void stopsBeforeTheFactorRunsAway() {
        Finding finding = only(RULE, TestCar.tandem().withRearShoes("two_leading", "0.82"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("beyond");
        assertThat(figure("factor", finding)).isEqualTo(10);
    }

    @Test
    void cannotTellFromAFactorAlone() {
        Finding finding = only(RULE, TestCar.tandem().withRearDrums("3/4 in"));
        assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(finding.limit()).isNull();
        assertThat(figure("factor", finding)).isEqualTo(2.3);
    }

    @Test
    void saysNothingOfDiscs() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
