package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DrumSensitivityTest {
    private static final DrumSensitivity RULE = new DrumSensitivity();

    /**
     * Row C1 as two leading shoes: the factor goes as mu/(1 - mu/0.88682). A tenth more than 0.28 gives
     * 0.308/0.28 x (1 - 0.31573)/(1 - 0.34731) = 1.1532, a tenth more than 0.50 gives 1.1 x 0.43619/0.37981 = 1.2633.
     */
    @ParameterizedTest
    @CsvSource({"0.28, FINE, 0.1532", "0.50, CAUTION, 0.2633"})
    void comparesWithTwiceADisc(String friction, State state, double change) {
        Finding finding = only(RULE, TestCar.tandem().withRearShoes("two_leading", friction));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(found(finding)).isCloseTo(change, within(1e-4));
        assertThat(limit(finding).tag()).isEqualTo(Tag.ESTIMATE);
    }

    /** Without geometry, and past self-lock, which is told by its own rule. */
    @Test
    void isSilentWhereThereIsNoChangeToTell() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
        assertThat(TestCar.tandem().withRearDrums("3/4 in").judgedBy(RULE)).isEmpty();
        assertThat(TestCar.tandem().withRearShoes("two_leading", "0.85").judgedBy(RULE))
                .isEmpty();
    }
}
