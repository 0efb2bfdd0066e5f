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

class BarRangeTest {
    private static final BarRange RULE = new BarRange();

    /** 10 mm either way at 1 mm a turn. */
    @ParameterizedTest
    @CsvSource({"0 mm, FINE, 10, 10", "7.99 mm, FINE, 2.01, 17.99", "8.01 mm, CAUTION, 1.99, 18.01"})
    @CsvSource({"-7.99 mm, FINE, 17.99, 2.01", "-9 mm, CAUTION, 19, 1"})
    void countsTurnsBothWays(String offset, State state, double toFront, double toRear) {
        Finding finding = only(RULE, TestCar.twin().with("apply.balance_bar.offset", offset));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(figure("to_front", finding)).isCloseTo(toFront, within(1e-9));
        assertThat(figure("to_rear", finding)).isCloseTo(toRear, within(1e-9));
        assertThat(found(finding)).isCloseTo(Math.min(toFront, toRear), within(1e-9));
        assertThat(limit(finding).tag()).isEqualTo(Tag.ESTIMATE);
        assertThat(limitValue(finding)).isEqualTo(2);
    }

    /** Lever arms of a bar of 64 mm with its bearing 10 mm off the middle: 42/64 and 22/64. */
    @Test
    void tellsTheSharesAtTheEnds() {
        Finding finding = only(RULE, TestCar.twin());
        assertThat(figure("most_front_share", finding)).isCloseTo(42.0 / 64, within(1e-12));
        assertThat(figure("least_front_share", finding)).isCloseTo(22.0 / 64, within(1e-12));
    }

    @Test
    void isSilentWithoutABar() {
        assertThat(TestCar.tandem().judgedBy(RULE)).isEmpty();
    }
}
