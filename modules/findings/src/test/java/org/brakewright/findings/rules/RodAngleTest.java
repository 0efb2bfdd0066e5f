package org.brakewright.findings.rules;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.hardStop;
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

class RodAngleTest {
    private static final RodAngle RULE = new RodAngle();

    @Test
    void isFineWithALevelRodAtAllOfTheStroke() {
        Finding finding = only(RULE, Hung.pedal());
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(finding.variant()).isEmpty();
        assertThat(found(finding)).isCloseTo(Hung.lean(0.147), within(1e-9));
        assertThat(limitValue(finding)).isCloseTo(Math.toRadians(5), within(1e-12));
        assertThat(limit(finding).tag()).isEqualTo(Tag.ESTIMATE);
    }

    @Test
    void tellsARodThatIsSteepOnlyBeyondTheHardStop() {
        Finding finding = only(RULE, Hung.pedal().with("pedal.travel_to_stop", "200 mm"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo("on_the_way");
        assertThat(found(finding)).isCloseTo(Hung.lean(0.197), within(1e-9));
        assertThat(figure("at_work", finding)).isLessThan(Math.toRadians(5));
    }

    /** The far end 15 mm lower: 7.1 degrees at rest, and the pin still rises. */
    @Test
    void cautionsAgainstARodThatIsSteepAtTheHardStop() {
        TestCar car = Hung.pedal().with("pedal.mechanism.socket_up", "-75 mm");
        Finding finding = only(RULE, car);
        double thrust = 0.85
                * requireNonNull(car.facts().analysis().pedal().atHardStop()).ratio()
                * hardStop(car.facts()).point().pedalForceN();
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEmpty();
        assertThat(found(finding)).isGreaterThan(Math.atan(15.0 / 120));
        assertThat(figure("side", finding)).isCloseTo(thrust / 2 * Math.tan(found(finding)), withinPercentage(1e-6));
    }

    /** Half of what masters and clevises differ, over rods of 90 mm. */
    @ParameterizedTest
    @CsvSource({"66 mm, FINE, 1", "79 mm, FINE, 7.5", "80 mm, CAUTION, 8"})
    void judgesTheLeanSeenFromAboveWhenOnlyTheRatioIsGiven(String masters, State state, double inwardMm) {
        Finding finding = only(RULE, TestCar.twin().with("apply.balance_bar.master_spacing", masters));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo("across");
        assertThat(found(finding)).isCloseTo(Math.atan(inwardMm / 90), within(1e-12));
    }

    @Test
    void isSilentWhenNothingIsKnownAndWithoutAHardStop() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
        assertThat(TestCar.hopeless()
                        .with("apply.balance_bar.master_spacing", "80 mm")
                        .judgedBy(RULE))
                .isEmpty();
    }
}
