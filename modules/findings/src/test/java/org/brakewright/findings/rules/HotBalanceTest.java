package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.junit.jupiter.api.Test;

class HotBalanceTest {
    private static final HotBalance RULE = new HotBalance();

    /**
     * By hand: front share 0.7, so the rear locks first from 1.0 g on. With a front faded to a half the share is 0.35/0.65 = 0.538, and the rear
     * locks first from (0.5 - 0.462)/0.2 = 0.19 g on.
     */
    @Test
    void stopsWhenTheFrontFadesAlone() {
        Finding finding = only(RULE, HeatedCars.friction(HeatedCars.STOP, "front", "0.21"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(found(finding) / 9.80665).isCloseTo((0.5 - 0.3 / 0.65) / 0.2, within(0.002));
        assertThat(figure("share", finding)).isCloseTo(0.35 / 0.65, within(1e-4));
        assertThat(figure("front_left", finding)).isCloseTo(0.5, within(1e-9));
        assertThat(limitValue(finding) / 9.80665).isCloseTo(0.9, within(1e-9));
    }

    @Test
    void cautionsWhenItIsSoColdToo() {
        TestCar rearFirst = HeatedCars.STOP.with("rear.pad_friction", "0.6");
        assertThat(only(RULE, rearFirst).state()).isEqualTo(State.CAUTION);
        assertThat(limit(only(RULE, rearFirst)).whose()).contains("grip");
    }

    @Test
    void staysFineWhenHeatMovesNothing() {
        Finding finding = only(RULE, HeatedCars.STOP);
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(about("", RULE, HeatedCars.STOP)).isEqualTo(finding);
    }

    @Test
    void saysNothingWithoutASchedule() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
