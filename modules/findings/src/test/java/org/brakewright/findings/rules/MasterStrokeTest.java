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

class MasterStrokeTest {
    private static final MasterStroke RULE = new MasterStroke();

    /** The front master goes 10.334 mm: 15 % are left of 12.158 mm, nothing of 10.334 mm. */
    @ParameterizedTest
    @CsvSource({"12.2 mm, FINE", "12.1 mm, CAUTION", "10.4 mm, CAUTION", "10.3 mm, STOP"})
    void comparesWhatIsLeft(String stroke, State state) {
        TestCar car = TestCar.twin().with("apply.front_master.stroke", stroke);
        assertThat(about("front", RULE, car).state()).isEqualTo(state);
        assertThat(about("rear", RULE, car).state()).isEqualTo(State.FINE);
    }

    @Test
    void tellsStrokeUsedAndLeft() {
        Finding rear = about("rear", RULE, TestCar.twin());
        assertThat(figure("used", rear) + figure("left", rear)).isCloseTo(0.028, within(1e-12));
        assertThat(found(rear)).isCloseTo(figure("left", rear) / 0.028, within(1e-12));
        assertThat(limitValue(rear)).isEqualTo(0.15);
        assertThat(limit(rear).tag()).isEqualTo(Tag.BUILDERS_CHOICE);
    }

    /** The chambers of the test car's tandem master have 20 mm and 18 mm. */
    @ParameterizedTest
    @CsvSource({"primary, 0.020, 0.018", "secondary, 0.018, 0.020"})
    void followsTheFrontLineToItsChamber(String chamber, double front, double rear) {
        TestCar car = TestCar.tandem().with("apply.front_fed_by", chamber);
        assertThat(whole(about("front", RULE, car))).isCloseTo(front, within(1e-12));
        assertThat(whole(about("rear", RULE, car))).isCloseTo(rear, within(1e-12));
    }

    @Test
    void isSilentWithoutAHardStop() {
        assertThat(TestCar.hopeless().judgedBy(RULE)).isEmpty();
    }

    private static double whole(Finding finding) {
        return figure("used", finding) + figure("left", finding);
    }
}
