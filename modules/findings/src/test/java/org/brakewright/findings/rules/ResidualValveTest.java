package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.limitValue;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Valves of 2 psi against drain-back and of 10 psi for drum cups: common practice, no source. */
class ResidualValveTest {
    private static final ResidualValve RULE = new ResidualValve();
    private static final TestCar DISCS = TestCar.twin().with("front.threshold_pressure", "0.5 bar");
    private static final TestCar DRUMS =
            TestCar.twin().withRearDrums("3/4 in").with("rear.threshold_pressure", "3 bar");

    private static Finding front(TestCar car) {
        return about("front", RULE, car);
    }

    private static Finding rear(TestCar car) {
        return about("rear", RULE, car);
    }

    /** 200 mm of 1,070 kg/m3 are 0.021 bar, below 2 psi. */
    @ParameterizedTest
    @CsvSource({"0 bar, -200 mm, CAUTION, drains", "2 psi, -200 mm, FINE, ''", "0 bar, 200 mm, FINE, ''"})
    @CsvSource({"10 psi, -200 mm, CAUTION, drags", "0.4 bar, 200 mm, CAUTION, drags"})
    void discs(String valve, String level, State state, String variant) {
        Finding finding =
                front(DISCS.with("lines.front.residual_valve", valve).with("lines.front.level_above_brakes", level));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
    }

    /** Pads that press from 0.1 bar on: 2 psi are 0.138 bar. */
    @Test
    void padsThatPressSoonerDragSooner() {
        Finding finding = front(DISCS.with("front.threshold_pressure", "0.1 bar")
                .with("lines.front.residual_valve", "2 psi")
                .with("lines.front.level_above_brakes", "-200 mm"));
        assertThat(finding.variant()).isEqualTo("drags");
        assertThat(limitValue(finding)).isCloseTo(0.1e5, within(1e-6));
        assertThat(figure("drag", finding)).isPositive();
    }

    @Test
    void tellsTheHeadThatDrains() {
        assertThat(limitValue(front(DISCS.with("lines.front.level_above_brakes", "-200 mm"))))
                .isCloseTo(1070 * 9.80665 * 0.2, within(1e-6));
    }

    @Test
    void asksForTheLevelWhenThereIsAValve() {
        assertThat(front(DISCS.with("lines.front.residual_valve", "2 psi")).state())
                .isEqualTo(State.CANNOT_TELL);
    }

    @ParameterizedTest
    @CsvSource({"no, 0 bar, CAUTION, cups", "no, 2 psi, CAUTION, cups", "no, 10 psi, FINE, cups"})
    @CsvSource({"yes, 0 bar, FINE, expanders", "yes, 10 psi, FINE, expanders"})
    void drums(String expanders, String valve, State state, String variant) {
        Finding finding = rear(DRUMS.with("rear.cup_expanders", expanders).with("lines.rear.residual_valve", valve));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
    }

    @Test
    void asksForCupExpanders() {
        assertThat(rear(DRUMS).state()).isEqualTo(State.CANNOT_TELL);
        assertThat(rear(DRUMS.with("lines.rear.residual_valve", "10 psi")).state())
                .isEqualTo(State.FINE);
    }

    @Test
    void drumsDrainToo() {
        TestCar car = DRUMS.with("rear.cup_expanders", "yes").with("lines.rear.level_above_brakes", "-100 mm");
        assertThat(rear(car).variant()).isEqualTo("drains");
    }

    @Test
    void isSilentOnDiscsOfWhichNothingIsGiven() {
        assertThat(DISCS.judgedBy(RULE)).isEmpty();
    }
}
