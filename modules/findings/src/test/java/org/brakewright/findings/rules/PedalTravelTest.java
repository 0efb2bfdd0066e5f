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

class PedalTravelTest {
    private static final PedalTravel RULE = new PedalTravel();

    /** By virtual work the pad goes free play, ratio times the mean of both strokes, and push over mount stiffness. */
    @Test
    void tellsTheTravelOfTheHardStop() {
        TestCar car = TestCar.twin();
        HardStop stop = hardStop(car.facts());
        double meanStroke = (stop.point().frontStrokeM() + stop.point().rearStrokeM()) / 2;
        Finding finding = only(RULE, car);
        assertThat(finding.state()).isEqualTo(State.FINE);
        assertThat(found(finding))
                .isCloseTo(0.003 + 5.5 * meanStroke + ByHand.push(0.9) * (1 / 200e3 + 1 / 1e9), within(1e-9));
        assertThat(limitValue(finding)).isCloseTo(0.075, within(1e-12));
        assertThat(limit(finding).tag()).isEqualTo(Tag.BUILDERS_CHOICE);
    }

    /** The travel is 55.377 mm. */
    @ParameterizedTest
    @CsvSource({"55.38 mm, FINE", "55.37 mm, CAUTION", "2 in, CAUTION"})
    void isHeldAgainstTheBuildersAim(String aim, State state) {
        assertThat(only(RULE, TestCar.twin().with("intent.most_travel", aim)).state())
                .isEqualTo(state);
    }

    /** 7 mm more free play are 7 mm more travel. */
    @Test
    void countsFreePlay() {
        double before = found(only(RULE, TestCar.twin()));
        double after = found(only(RULE, TestCar.twin().with("pedal.free_play", "10 mm")));
        assertThat(after - before).isCloseTo(0.007, within(1e-9));
    }

    @Test
    void isSilentWithoutAHardStop() {
        assertThat(TestCar.hopeless().judgedBy(RULE)).isEmpty();
    }
}
