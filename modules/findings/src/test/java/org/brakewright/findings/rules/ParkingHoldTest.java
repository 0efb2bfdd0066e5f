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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A car of 800 kg, half behind, centre of gravity at a fifth of the wheelbase, tyres of 300 mm. */
class ParkingHoldTest {
    private static final ParkingHold RULE = new ParkingHold();
    private static final TestCar CAR = TestCar.twin().withParkingBrake();

    /** 800 kg x 9.80665 x 0.2/sqrt(1.04), N. */
    private static final double PULL = 1538.6;

    /** Force at the road of both wheels over the driver's: 8 x 0.75 x 20 x 2 x 0.3 x 0.110/0.300. */
    private static final double GAIN = 26.4;

    /** Grip 0.9 slides on the rear axle nose down at 0.9 x 0.5/(1 + 0.9 x 0.2) = 0.3814 (T. Bevan, The Theory of Machines, ch. 8). */
    @Test
    void holdsUpToTheGripOfItsAxle() {
        Finding finding = only(RULE, CAR);
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding)).isCloseTo(0.3814, within(1e-4));
        assertThat(figure("nose_down", finding)).isCloseTo(0.3814, within(1e-4));
        assertThat(figure("nose_up", finding)).isCloseTo(0.45 / (1 - 0.18), within(1e-4));
        assertThat(limitValue(finding)).isEqualTo(0.20);
        assertThat(limit(finding).tag()).isEqualTo(Tag.COMMON_PRACTICE);
    }

    /** A force F holds tan(asin(26.4 F/7845.32 N)): 20 % takes 58.28 N, 16 % takes 46.95 N. */
    @ParameterizedTest
    @CsvSource({"58.4 N, FINE", "58.2 N, CAUTION", "50 N, CAUTION"})
    void grades(String driver, State state) {
        Finding finding = only(RULE, CAR.with("parking.driver_force", driver));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(figure("ratio_needed", finding))
                .isCloseTo(8 * PULL / GAIN / Double.parseDouble(driver.replace(" N", "")), within(1e-3));
    }

    /** With half the lever ratio 16 % takes 93.9 N. */
    @ParameterizedTest
    @CsvSource({"94 N, CAUTION", "93 N, STOP"})
    void stopsBelowTheLeastGrade(String driver, State state) {
        TestCar car = CAR.with("parking.lever_ratio", "4").with("parking.driver_force", driver);
        assertThat(only(RULE, car).state()).isEqualTo(state);
    }

    /** Rear wheels nose down on a grip of 0.4: 0.2/1.08 = 0.185. */
    @Test
    void tellsWhenTheTyresSlide() {
        Finding finding = only(RULE, CAR.with("car.grip", "0.4"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo("slides");
        assertThat(found(finding)).isCloseTo(0.2 / 1.08, within(1e-4));
    }

    /** 400 N at a hand lever and 500 N at a pedal (UN R13-H Annex 3 and FMVSS 135 S7.12, from memory). */
    @ParameterizedTest
    @CsvSource({"hand, 400", "foot, 500"})
    void neverFineByRememberedRules(String control, double allowed) {
        TestCar car = CAR.with("parking.control", control).answeringTo("un_r13h", "fmvss_135");
        for (String rule : new String[] {"UN R13-H", "FMVSS 135"}) {
            Finding finding = about(rule, RULE, car);
            assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
            assertThat(found(finding)).isCloseTo(PULL / GAIN, within(0.01));
            assertThat(limitValue(finding)).isEqualTo(allowed);
        }
    }

    /** A caliper lever of 2.5 in place of 20 takes 466 N. */
    @ParameterizedTest
    @CsvSource({"hand, STOP", "foot, CANNOT_TELL"})
    void holdsTheForceAgainstTheRule(String control, State state) {
        TestCar car = CAR.with("parking.acts_on.pad_force_ratio", "2.5")
                .with("parking.control", control)
                .answeringTo("un_r13h");
        Finding finding = about("UN R13-H", RULE, car);
        assertThat(finding.state()).isEqualTo(state);
        assertThat(found(finding)).isCloseTo(8 * PULL / GAIN, within(0.05));
    }

    @Test
    void aRuleIsNotMetBySlidingTyres() {
        Finding finding = about("UN R13-H", RULE, CAR.with("car.grip", "0.4").answeringTo("un_r13h"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("slides_rule");
        assertThat(finding.found()).isNull();
    }

    @Test
    void cannotTellOfARoadCarWithoutOne() {
        assertThat(only(RULE, TestCar.twin()).state()).isEqualTo(State.CANNOT_TELL);
        assertThat(TestCar.twin().with("intent.use", "track").judgedBy(RULE)).isEmpty();
    }
}
