package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
import static org.brakewright.findings.Judgement.figure;
import static org.brakewright.findings.Judgement.found;
import static org.brakewright.findings.Judgement.hardStop;
import static org.brakewright.findings.Judgement.limit;
import static org.brakewright.findings.Judgement.limitValue;

import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.brakewright.findings.TestCar;
import org.brakewright.model.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PartRatingTest {
    private static final PartRating RULE = new PartRating();

    /** 1335 N make 125.68 bar by hand, the hard stop 39.41 bar. */
    @ParameterizedTest
    @CsvSource({"125.7 bar, FINE", "125.6 bar, CAUTION", "39.5 bar, CAUTION", "39.4 bar, STOP"})
    void comparesPanicPushAndHardStop(String rating, State state) {
        TestCar car = TestCar.twin().with("front.rated_pressure", rating);
        Finding front = about("front", RULE, car);
        assertThat(front.state()).isEqualTo(state);
        assertThat(found(front)).isCloseTo(ByHand.pressure(1335), within(1.0));
        assertThat(figure("working", front)).isCloseTo(ByHand.pressure(ByHand.push(0.9)), within(1.0));
        assertThat(limit(front).tag()).isEqualTo(Tag.PART_SHEET);
        assertThat(about("rear", RULE, car).state()).isEqualTo(State.FINE);
    }

    @Test
    void takesTheLeastRatingOfTheCircuit() {
        TestCar car = TestCar.twin().with("apply.rear_master.rated_pressure", "100 bar");
        assertThat(limitValue(about("rear", RULE, car))).isCloseTo(100e5, within(1e-3));
        assertThat(limitValue(about("front", RULE, car))).isCloseTo(200e5, within(1e-3));
    }

    @Test
    void cannotTellWithoutARating() {
        Finding finding = about("rear", RULE, TestCar.twin().without("rear.rated_pressure"));
        assertThat(finding.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(finding.limit()).isNull();
    }

    /** A valve spares the caliper, not the master: 20 bar + 0.3 x (p - 20 bar) is below 30 bar while p is above 39. */
    @Test
    void judgesTheRearInFrontOfTheValve() {
        TestCar car =
                TestCar.twin().withValve("20 bar", "0.3", false).with("apply.rear_master.rated_pressure", "30 bar");
        Finding rear = about("rear", RULE, car);
        assertThat(hardStop(car.facts()).point().rearPressurePa()).isLessThan(30e5);
        assertThat(figure("working", rear)).isGreaterThan(39e5);
        assertThat(rear.state()).isEqualTo(State.STOP);
    }

    /** Without a hard stop there is still a panic push. */
    @Test
    void judgesThePanicPushAlone() {
        assertThat(TestCar.hopeless().judgedBy(RULE)).extracting(Finding::state).containsOnly(State.FINE);
    }
}
