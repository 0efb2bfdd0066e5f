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

class FluidBoilingTest {
    private static final FluidBoiling RULE = new FluidBoiling();

    /** 49 CFR 571.116 (secondary source): DOT 4 boils at 230 °C dry and 155 °C wet. */
    @Test
    void staysFineInOneStop() {
        Finding finding = only(RULE, HeatedCars.STOP);
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(limitValue(finding)).isCloseTo(155 + 273.15, within(1e-9));
        assertThat(figure("dry", finding)).isCloseTo(230 + 273.15, within(1e-9));
        assertThat(found(finding)).isBetween(293.15, 330.0);
    }

    @Test
    void comparesWithTheBottle() {
        double hot = found(only(RULE, HeatedCars.TORTURE));
        assertThat(bottle(hot + 200, hot + 25).state()).isEqualTo(State.FINE);
        assertThat(bottle(hot + 200, hot + 15).variant()).isEqualTo("near");
        assertThat(bottle(hot + 20, hot - 5).state()).isEqualTo(State.CAUTION);
        assertThat(bottle(hot + 20, hot - 5).variant()).isEmpty();
        assertThat(bottle(hot - 2, hot - 60).state()).isEqualTo(State.STOP);
        assertThat(limit(bottle(hot - 2, hot - 60)).tag()).isEqualTo(Tag.PART_SHEET);
    }

    private static Finding bottle(double dry, double wet) {
        return only(
                RULE,
                HeatedCars.TORTURE
                        .with("fluid.dry_boiling_point", dry + " K")
                        .with("fluid.wet_boiling_point", wet + " K"));
    }

    @Test
    void cannotTellFromARememberedGradeOrNone() {
        Finding remembered = only(RULE, HeatedCars.STOP.with("fluid.grade", "dot_5_1"));
        assertThat(remembered.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(remembered.variant()).isEqualTo("remembered");
        Finding unknown = only(RULE, HeatedCars.STOP.without("fluid.grade"));
        assertThat(unknown.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(unknown.variant()).isEmpty();
        assertThat(limitValue(unknown)).isCloseTo(140 + 273.15, within(1e-9));
    }

    @Test
    void saysNothingWithoutASchedule() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
