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

class PedalReserveTest {
    private static final PedalReserve RULE = new PedalReserve();

    /** Travel 55.377 mm: 80 % of it is used of 69.22 mm, all of it of 55.377 mm. */
    @ParameterizedTest
    @CsvSource({"69.3 mm, FINE", "69.1 mm, CAUTION", "55.4 mm, CAUTION", "55.3 mm, STOP"})
    void comparesWhatIsLeft(String toStop, State state) {
        assertThat(only(RULE, TestCar.twin().with("pedal.travel_to_stop", toStop))
                        .state())
                .isEqualTo(state);
    }

    /** 20 % left in Australian inspection practice, from a secondary source (standards 5.2 and 7.3). */
    @Test
    void namesTheInspectionRule() {
        Finding finding = only(RULE, TestCar.twin());
        double travel = figure("travel", finding);
        assertThat(found(finding)).isCloseTo((0.150 - travel) / 0.150, within(1e-12));
        assertThat(figure("reserve", finding)).isCloseTo(0.150 - travel, within(1e-12));
        assertThat(limitValue(finding)).isEqualTo(0.20);
        assertThat(limit(finding).tag()).isEqualTo(Tag.SECONDARY);
    }

    @Test
    void doesNotLendTheInspectionRuleToASmallerAim() {
        Finding finding = only(RULE, TestCar.twin().with("intent.least_reserve", "0.05"));
        assertThat(limit(finding).tag()).isEqualTo(Tag.BUILDERS_CHOICE);
        assertThat(limit(finding).whose()).contains("below the 20 %");
    }

    @Test
    void isSilentWithoutAHardStop() {
        assertThat(TestCar.hopeless().judgedBy(RULE)).isEmpty();
    }
}
