package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
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

class BarFloatTest {
    private static final BarFloat RULE = new BarFloat();

    /** Neither zero nor more than 2 mm: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"0, CAUTION, clamped", "0.05, CAUTION, clamped", "0.2, FINE, ''", "2, FINE, ''", "2.1, CAUTION, ''"})
    void wantsALittleFloat(double millimetres, State state, String variant) {
        Finding finding = only(RULE, TestCar.twin().with("apply.balance_bar.side_float", millimetres + " mm"));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
        assertThat(found(finding)).isCloseTo(millimetres * 1e-3, within(1e-12));
        assertThat(limitValue(finding)).isEqualTo(2e-3);
        assertThat(limit(finding).tag()).isEqualTo(Tag.COMMON_PRACTICE);
    }

    @Test
    void cannotTellWhatNobodyMeasured() {
        assertThat(only(RULE, TestCar.twin().without("apply.balance_bar.side_float"))
                        .state())
                .isEqualTo(State.CANNOT_TELL);
    }

    @Test
    void isSilentWithoutABar() {
        assertThat(TestCar.tandem().judgedBy(RULE)).isEmpty();
    }
}
