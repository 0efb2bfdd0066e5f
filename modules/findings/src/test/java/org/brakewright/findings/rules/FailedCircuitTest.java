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
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FailedCircuitTest {
    private static final FailedCircuit RULE = new FailedCircuit();
    private static final String FRONT = "front_circuit";
    private static final String REAR = "rear_circuit";

    /** 500 N on the rear brakes alone, by hand: 3.162 m/s2, below what their tyres give. */
    private static final double REAR_ALONE = ByHand.pressure(500) * ByHand.REAR_PER_PASCAL / 800;

    /** Front wheels alone on a grip of 0.9: 0.9 x 0.5/(1 - 0.18) g (T. Bevan, The Theory of Machines, ch. 8). */
    private static final double FRONT_ALONE = 0.9 * 0.5 / (1 - 0.18) * ByHand.G;

    /** 2.55 m/s2: NSW brake assessment manual 2013, p. 38 (read in the text: standards 5.1). */
    @Test
    void tellsWhatIsLeft() {
        TestCar car = TestCar.twin().answeringTo("state_assessment");
        Finding front = about(FRONT, RULE, car);
        assertThat(front.state()).isEqualTo(State.FINE);
        assertThat(found(front)).isCloseTo(REAR_ALONE, within(1e-9));
        assertThat(found(about(REAR, RULE, car))).isCloseTo(FRONT_ALONE, within(1e-9));
        assertThat(figure("push", front)).isEqualTo(500);
        assertThat(limitValue(front)).isEqualTo(2.55);
        assertThat(limit(front).tag()).isEqualTo(Tag.VERIFIED);
        assertThat(limit(front).whose()).contains("p. 38");
    }

    /** 2.44 m/s2: UN R13-H Annex 3 and FMVSS 135 S7.10 (from memory: standards 1.2, 3.3). */
    @ParameterizedTest
    @CsvSource({"un_r13h, UN R13-H Annex 3", "fmvss_135, FMVSS 135 S7.10"})
    void aRememberedFigureIsNeverAPass(String ruleSet, String clause) {
        Finding finding = about(FRONT, RULE, TestCar.twin().answeringTo(ruleSet));
        assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(limitValue(finding)).isEqualTo(2.44);
        assertThat(limit(finding).tag()).isEqualTo(Tag.FROM_MEMORY);
        assertThat(limit(finding).whose()).startsWith(clause);
    }

    /** What is left goes with the ratio: 2.55 m/s2 at 4.435, 2.44 m/s2 at 4.244. */
    @ParameterizedTest
    @CsvSource({"state_assessment, 4.44, FINE", "state_assessment, 4.43, STOP"})
    @CsvSource({"un_r13h, 4.25, CANNOT_TELL", "un_r13h, 4.24, STOP"})
    void isExactAtTheLimit(String ruleSet, String ratio, State state) {
        TestCar car = TestCar.twin().answeringTo(ruleSet).with("pedal.ratio", ratio);
        assertThat(about(FRONT, RULE, car).state()).isEqualTo(state);
    }

    @Test
    void takesTheStrictestRule() {
        TestCar car = TestCar.twin().answeringTo("un_r13h", "fmvss_135", "state_assessment");
        assertThat(limitValue(about(FRONT, RULE, car))).isEqualTo(2.55);
    }

    @Test
    void holdsACarWithoutRulesAgainstAFigureThatWasRead() {
        Finding finding = about(FRONT, RULE, TestCar.twin());
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(limitValue(finding)).isEqualTo(2.55);
        assertThat(limit(finding).tag()).isEqualTo(Tag.VERIFIED);
        assertThat(limit(finding).whose()).startsWith("no rule set chosen");
    }

    /** A bar that binds at 5 degrees lets a rod run 5.6 mm ahead; the failed master has some 20 mm to go. */
    @ParameterizedTest
    @CsvSource({"5.5, CAUTION", "4, STOP"})
    void saysThatTheBarBinds(String ratio, State state) {
        TestCar car =
                TestCar.twin().with("apply.balance_bar.tilt_limit", "5 deg").with("pedal.ratio", ratio);
        Finding finding = about(FRONT, RULE, car);
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo("binds");
    }

    /** The pedal goes 106.96 mm down at 500 N; before that the push is not used up. */
    @ParameterizedTest
    @CsvSource({"107, FINE, ''", "105, CAUTION, at_stop", "95, STOP, at_stop"})
    void saysThatThePedalMeetsItsStop(int toStop, State state, String variant) {
        Finding finding = about(FRONT, RULE, TestCar.twin().with("pedal.travel_to_stop", toStop + " mm"));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
        assertThat(found(finding)).isLessThanOrEqualTo(REAR_ALONE + 1e-9);
        if (state != State.FINE) {
            assertThat(figure("travel", finding)).isCloseTo(toStop / 1000.0, within(1e-6));
        }
    }

    /** The failed master runs to the end of its 28 mm: 3 + 5.5 x (28 + live)/2 + 500/200 mm. */
    @Test
    void tellsHowFarThePedalFalls() {
        Finding finding = about(REAR, RULE, TestCar.twin());
        double live = (figure("travel", finding) - 0.003 - 500 / 200e3) * 2 / 5.5 - 0.028;
        assertThat(live).isBetween(0.0103, 0.0135);
        assertThat(figure("fall", finding)).isPositive();
    }

    /** A light load case brakes harder for the same push; a heavy one counts. */
    @Test
    void countsTheWorstLoadCase() {
        Finding finding = about(FRONT, RULE, TestCar.twin().alsoLoaded("laden", 500, 700, 520));
        assertThat(found(finding)).isCloseTo(REAR_ALONE * 800 / 1200, within(1e-9));
        assertThat(finding.state()).isEqualTo(State.STOP);
    }

    /** Half the weight at 500 N without servo: NSW manual, p. 25; 1.6 t give 0.1251 g per unit of ratio by hand. */
    @ParameterizedTest
    @CsvSource({"4.02, FINE", "3.98, STOP"})
    void holdsADeadBoosterAgainstHalfTheWeight(String ratio, State state) {
        Finding finding = about("booster", RULE, heavyBoosted(ratio).answeringTo("state_assessment"));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo("booster");
        assertThat(limitValue(finding)).isCloseTo(0.5 * ByHand.G, within(1e-12));
        assertThat(limit(finding).tag()).isEqualTo(Tag.VERIFIED);
    }

    @ParameterizedTest
    @CsvSource({"un_r13h, 2.02, CANNOT_TELL", "un_r13h, 1.96, STOP", "fmvss_135, 2.02, CANNOT_TELL"})
    void holdsADeadBoosterAgainstTheSecondaryRule(String ruleSet, String ratio, State state) {
        Finding finding = about("booster", RULE, heavyBoosted(ratio).answeringTo(ruleSet));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(limitValue(finding)).isEqualTo(2.44);
    }

    @Test
    void knowsOnlyWhatTheCarHas() {
        assertThat(TestCar.tandem().judgedBy(RULE)).extracting(Finding::subject).containsExactly(FRONT, REAR);
        assertThat(TestCar.boosted().judgedBy(RULE))
                .extracting(Finding::subject)
                .containsExactly(FRONT, REAR, "booster");
    }

    private static TestCar heavyBoosted(String ratio) {
        return TestCar.boosted()
                .with("car.load_cases[0].front_axle", "800 kg")
                .with("car.load_cases[0].rear_axle", "800 kg")
                .with("pedal.ratio", ratio);
    }
}
