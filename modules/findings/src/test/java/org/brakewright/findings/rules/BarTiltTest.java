package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.hardStop;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.limitValue;
import static org.brakewright.findings.Judgement.only;

import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarTiltTest {
    private static final BarTilt RULE = new BarTilt();

    /** The front rod runs 2.383 mm ahead over 64 mm: 2.1325 degrees. */
    @ParameterizedTest
    @CsvSource({"4.3 deg, FINE, 2.15", "4.2 deg, CAUTION, 2.1", "2.2 deg, CAUTION, 1.1", "2.1 deg, STOP, 2.1"})
    void comparesTheTiltWithWhereItBinds(String binds, State state, double limitDegrees) {
        TestCar car = TestCar.twin().with("apply.balance_bar.tilt_limit", binds);
        Finding finding = only(RULE, car);
        HardStop stop = hardStop(car.facts());
        double ahead = stop.point().frontStrokeM() - stop.point().rearStrokeM();
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo("front");
        assertThat(found(finding)).isCloseTo(Math.atan(ahead / 0.064), within(1e-12));
        assertThat(limitValue(finding)).isCloseTo(Math.toRadians(limitDegrees), within(1e-12));
        assertThat(limit(finding).tag()).isEqualTo(Tag.COMMON_PRACTICE);
    }

    @Test
    void tellsARearRodThatRunsAhead() {
        Finding finding = only(RULE, TestCar.twin().with("rear.running_clearance", "0.5 mm"));
        assertThat(finding.variant()).isEqualTo("rear");
        assertThat(found(finding)).isPositive();
    }

    /** Front and rear rod ahead is one judgement, so that a change that turns the tilt round can cure it. */
    @Test
    void staysTheSameJudgementWhicheverRodIsAhead() {
        Finding front = only(RULE, TestCar.twin());
        Finding rear = only(RULE, TestCar.twin().with("rear.running_clearance", "0.5 mm"));
        assertThat(front.sameJudgement(rear)).isTrue();
    }

    @Test
    void isSilentWithoutABarAndWithoutAHardStop() {
        assertThat(TestCar.tandem().judgedBy(RULE)).isEmpty();
        assertThat(TestCar.hopeless().judgedBy(RULE)).isEmpty();
    }
}
