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

class RearLocksFirstTest {
    private static final RearLocksFirst RULE = new RearLocksFirst();

    /** The rear is first from 1.0 g on; with the margin of 5 % the front must be first up to 1.05 times the grip. */
    @ParameterizedTest
    @CsvSource({"0.90, FINE, 0.945", "0.95, FINE, 0.9975", "0.96, CAUTION, 1.008"})
    @CsvSource({"0.999, CAUTION, 1.04895", "1.001, STOP, 1.001", "1.2, STOP, 1.2"})
    void comparesWhereTheRearIsFirstWithTheGrip(String grip, State state, double limitG) {
        Finding finding = about("driver", RULE, TestCar.twin().with("car.grip", grip));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEmpty();
        assertThat(found(finding)).isCloseTo(TestCar.CRITICAL * ByHand.G, within(1e-6));
        assertThat(limitValue(finding)).isCloseTo(limitG * ByHand.G, within(1e-9));
        assertThat(limit(finding).tag()).isEqualTo(Tag.COMMON_PRACTICE);
    }

    /** Rear pads of 0.85 against 0.42: the rear takes 0.503 of the force and carries 0.5 of the load at most. */
    @Test
    void saysAlways() {
        Finding finding = about("driver", RULE, TestCar.twin().with("rear.pad_friction", "0.85"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("always");
        assertThat(finding.found()).isNull();
    }

    /** A third of the force behind would be too much from (1/2 - 1/3)/0.2 = 0.83 g on, which no push brings here. */
    @Test
    void saysNever() {
        Finding finding = about("driver", RULE, TestCar.hopeless());
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(finding.variant()).isEqualTo("never");
    }

    /** Front discs that only begin at 10 bar leave the first part of every stop to the rear. */
    @Test
    void saysBetweenWhichDecelerations() {
        Finding finding = about("driver", RULE, TestCar.twin().with("front.threshold_pressure", "10 bar"));
        assertThat(finding.state()).isEqualTo(State.STOP);
        assertThat(finding.variant()).isEqualTo("between");
        assertThat(found(finding)).isCloseTo(0.15 * ByHand.G, within(1e-9));
        assertThat(figure("to", finding)).isCloseTo(ByHand.rearFirstUpTo(10e5) * ByHand.G, within(1e-4));
    }

    /** At 4 bar that stretch ends below 0.15 g; what counts is where the rear is first again, here beyond the grip. */
    @Test
    void doesNotJudgeBelowWhereThePublishedRulesBegin() {
        TestCar car = TestCar.twin().with("front.threshold_pressure", "4 bar").with("car.grip", "0.8");
        Finding finding = about("driver", RULE, car);
        assertThat(ByHand.rearFirstUpTo(4e5)).isLessThan(0.15);
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding)).isCloseTo(ByHand.rearFirstAgainFrom(4e5) * ByHand.G, within(1e-3));
    }

    /** 300 kg behind instead of 400 at the same height: (3/7 - 0.3)/0.2 = 0.643 g. */
    @Test
    void judgesEveryLoadCase() {
        TestCar car = TestCar.twin().alsoLoaded("no fuel", 400, 300, 480);
        assertThat(car.judgedBy(RULE)).extracting(Finding::subject).containsExactly("driver", "no fuel");
        assertThat(about("driver", RULE, car).state()).isEqualTo(State.FINE);
        Finding light = about("no fuel", RULE, car);
        assertThat(light.state()).isEqualTo(State.STOP);
        assertThat(found(light)).isCloseTo((3.0 / 7 - 0.3) / 0.2 * ByHand.G, within(1e-5));
    }
}
