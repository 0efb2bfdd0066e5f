package org.brakewright.findings.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.findings.Judgement.about;
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

/**
 * Fluid from new to worn linings: 49 CFR 571.105 S5.4.2 (read in the text; presence in 135 from memory: standards 1.1). Two
 * pistons of 36 mm on each side of two discs, 7.5 mm of wear and 0.5 mm of clearance take 65.14 cc.
 */
class ReservoirVolumeTest {
    private static final ReservoirVolume RULE = new ReservoirVolume();
    private static final String FRONT = "front_circuit";
    private static final TestCar WORN =
            TestCar.twin().with("front.pad_wear", "7.5 mm").with("front.running_clearance", "0.5 mm");

    private static Finding front(TestCar car) {
        return about(FRONT, RULE, car);
    }

    @ParameterizedTest
    @CsvSource({"66 cc, FINE", "65 cc, CAUTION"})
    void holdsWhatWornPadsTake(String volume, State state) {
        Finding finding = front(WORN.with("lines.front.reservoir_volume", volume));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(limitValue(finding)).isCloseTo(8 * Math.PI / 4 * 0.036 * 0.036 * 8e-3, within(1e-12));
        assertThat(limit(finding).tag()).isEqualTo(Tag.VERIFIED);
    }

    @ParameterizedTest
    @CsvSource({"66 cc, CANNOT_TELL", "65 cc, STOP"})
    void isNeverFineByAClauseFromMemory(String volume, State state) {
        Finding finding = front(WORN.answeringTo("fmvss_135").with("lines.front.reservoir_volume", volume));
        assertThat(finding.state()).isEqualTo(state);
        assertThat(limit(finding).tag()).isEqualTo(Tag.FROM_MEMORY);
    }

    /** A master of 0.70 in displaces 6.95 cc in 28 mm; pads with half a millimetre left and no clearance take 4.07 cc. */
    @Test
    void holdsAFullStroke() {
        Finding finding = front(WORN.with("front.pad_wear", "0.5 mm")
                .with("front.running_clearance", "0 mm")
                .with("lines.front.reservoir_volume", "6 cc"));
        assertThat(finding.state()).isEqualTo(State.CAUTION);
        assertThat(finding.variant()).isEqualTo("stroke");
        assertThat(limitValue(finding)).isCloseTo(Math.PI / 4 * 0.01778 * 0.01778 * 0.028, within(1e-12));
    }

    @Test
    void saysWhatToMeasure() {
        assertThat(front(WORN).variant()).isEqualTo("volume");
        assertThat(front(TestCar.twin().with("lines.front.reservoir_volume", "66 cc"))
                        .variant())
                .isEqualTo("wear");
        Finding nothing = only(RULE, TestCar.twin());
        assertThat(nothing.state()).isEqualTo(State.CANNOT_TELL);
        assertThat(nothing.variant()).isEmpty();
    }
}
