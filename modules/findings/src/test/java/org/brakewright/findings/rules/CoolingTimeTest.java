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
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;

class CoolingTimeTest {
    private static final CoolingTime RULE = new CoolingTime();

    @Test
    void isColdAtOnceAfterOneStop() {
        Finding finding = only(RULE, HeatedCars.STOP);
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding)).isEqualTo(0);
        assertThat(figure("speed", finding)).isCloseTo(16.7, within(1e-9));
    }

    /** Heavy rotors behind closed wheels, hardly driven on: the excess falls to 1/e in half an hour and more. */
    @Test
    void cautionsWhenItTakesForEver() {
        TestCar closed = HeatedCars.TORTURE
                .with("heat.front.rotor_mass", "20 kg")
                .with("heat.front.airflow", "0.1")
                .with("heat.onward_speed", "5 km/h");
        Finding finding = only(RULE, closed);
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(found(finding)).isGreaterThan(limitValue(finding));
        assertThat(limit(finding).tag()).isEqualTo(Tag.ESTIMATE);
        assertThat(about("", RULE, closed)).isEqualTo(finding);
    }

    @Test
    void saysNothingWithoutASchedule() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
