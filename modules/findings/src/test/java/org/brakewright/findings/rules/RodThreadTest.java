package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
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

class RodThreadTest {
    private static final RodThread RULE = new RodThread();

    private static TestCar rod(TestCar car, String depth) {
        return car.with("pedal.pushrod.thread_diameter", "8 mm")
                .with("pedal.pushrod.thread_pitch", "1.25 mm")
                .with("pedal.pushrod.clevis_length", "22 mm")
                .with("pedal.pushrod.clevis_thread", depth)
                .with("pedal.pushrod.jam_nut", "5 mm");
    }

    private static TestCar car(String depth) {
        return rod(TestCar.twin(), depth);
    }

    /** 1 to 1.5 diameters in steel: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"7.9, STOP, 1", "8, CAUTION, 1.5", "11.9, CAUTION, 1.5", "12, FINE, 1.5", "20, FINE, 1.5"})
    void wantsOneAndAHalfDiameters(double millimetres, State state, double limit) {
        Finding finding = only(RULE, car(millimetres + " mm"));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(found(finding)).isCloseTo(millimetres / 8, within(1e-9));
        assertThat(limitValue(finding)).isEqualTo(limit);
        assertThat(limit(finding).tag()).isEqualTo(Tag.COMMON_PRACTICE);
    }

    /** By hand: 38 - 22 + (12 + 14)/2 = 29 mm are left, and 14 + 5 + 1.25 = 20.25 mm are needed; at 29 mm 20 are left. */
    @ParameterizedTest
    @CsvSource({"38, FINE, ''", "29, STOP, short"})
    void stopsARodThatIsAllThread(double millimetres, State state, String variant) {
        Finding finding = only(RULE, car("14 mm").with("apply.balance_bar.rod_length", millimetres + " mm"));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(finding.variant()).isEqualTo(variant);
    }

    @Test
    void isSilentWithoutThreadAndClevis() {
        assertThat(TestCar.twin().judgedBy(RULE)).isEmpty();
    }

    @Test
    void isSilentWhereNothingTellsTheLength() {
        assertThat(rod(TestCar.tandem(), "6 mm").judgedBy(RULE)).isEmpty();
    }

    /** A mechanism tells how long the rod of a tandem master is. */
    @Test
    void takesTheLengthFromTheMechanism() {
        assertThat(only(RULE, rod(Hung.on(TestCar.tandem()), "14 mm")).state()).isEqualTo(State.FINE);
    }
}
