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

class LiningTemperatureTest {
    private static final LiningTemperature RULE = new LiningTemperature();

    @Test
    void staysFineInOneStop() {
        Finding front = about("front", RULE, HeatedCars.STOP);
        assertThat(front.state()).isEqualTo(State.FINE);
        assertThat(found(front)).isCloseTo(293.15 + 33, within(3.0));
        assertThat(limitValue(front)).isEqualTo(723.15);
    }

    /** The skin is as hot as the rotor; the middle of the lining lags behind. */
    @Test
    void cautionsWhereTheLiningBurns() {
        Finding rear = about("rear", RULE, HeatedCars.TORTURE);
        assertThat(rear.state()).isEqualTo(State.CAUTION);
        assertThat(figure("mean", rear)).isLessThan(found(rear));
        assertThat(limit(rear).whose()).contains("lining");
        assertThat(only(new CoolingTime(), HeatedCars.TORTURE).state()).isNotEqualTo(State.STOP);
    }

    @Test
    void saysNothingWithoutASchedule() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
