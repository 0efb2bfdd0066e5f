package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.limitValue;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;

class RotorTemperatureTest {
    private static final RotorTemperature RULE = new RotorTemperature();

    /** By hand: 0.7 x 374 kJ over two rotors of 8 kg of 490 J/(kg K) is 33 K, its skin some tens of K more, from 20 °C. */
    @Test
    void staysFineInOneStop() {
        Finding front = about("front", RULE, HeatedCars.STOP);
        assertThat(front.state()).isEqualTo(State.FINE);
        assertThat(figure("mean", front)).isCloseTo(293.15 + 33, within(3.0));
        assertThat(found(front)).isBetween(figure("mean", front) + 5, figure("mean", front) + 80);
        assertThat(limitValue(front)).isEqualTo(873.15);
    }

    @Test
    void cautionsBeyondTheBuildersLimit() {
        TestCar once = HeatedCars.TORTURE.with("heat.schedules[0].count", "1");
        double face = found(about("front", RULE, once));
        Finding over = about("front", RULE, once.with("heat.front.rotor_limit", (face - 1) + " K"));
        assertThat(over.state()).isEqualTo(State.CAUTION);
        assertThat(limit(over).tag()).isEqualTo(Tag.PART_SHEET);
        assertThat(about("front", RULE, once.with("heat.front.rotor_limit", (face + 1) + " K"))
                        .state())
                .isEqualTo(State.FINE);
    }

    @Test
    void stopsWhereIronChanges() {
        Finding front = about("front", RULE, HeatedCars.TORTURE);
        assertThat(front.state()).isEqualTo(State.STOP);
        assertThat(figure("mean", front)).isGreaterThan(973.15);
    }

    @Test
    void saysNothingWithoutASchedule() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }
}
