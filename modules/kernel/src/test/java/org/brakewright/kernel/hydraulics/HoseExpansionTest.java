package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import java.util.List;
import org.brakewright.kernel.hydraulics.HoseExpansion.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Swelling of hoses. */
class HoseExpansionTest {
    private static final double PSI = 6894.757; // Pa, check values

    /** 49 CFR 571.106, Table I, ceilings at 1500 psi in cc/m (figures from memory, metric derived from cc/ft). */
    @ParameterizedTest
    @CsvSource({
        "3.0, 2.59, 1.38",
        "3.175, 2.59, 1.38",
        "4.0, 3.35, 2.36",
        "4.7625, 3.35, 2.36",
        "6.0, 4.27, 3.84",
        "6.35, 4.27, 3.84"
    })
    void ceilingsAt1500Psi(double insideMillimetres, String regular, String low) {
        double inside = insideMillimetres * 1e-3;
        assertPrinted(HoseExpansion.ceilingFor(inside, false).volume(1, 1500 * PSI) * 1e6, regular);
        assertPrinted(HoseExpansion.ceilingFor(inside, true).volume(1, 1500 * PSI) * 1e6, low);
    }

    /** 49 CFR 571.106, Table I at 1000 and 2900 psi, cc/ft, regular (from memory): one foot is 0.3048 m. */
    @ParameterizedTest
    @CsvSource({"3.0, 0.66, 1.21", "4.7625, 0.86, 1.67"})
    void ceilingsAtTheOtherPressures(double insideMillimetres, double at1000, double at2900) {
        HoseExpansion hose = HoseExpansion.ceilingFor(insideMillimetres * 1e-3, false);
        assertThat(hose.volume(0.3048, 1000 * PSI) * 1e6).isCloseTo(at1000, within(1e-6));
        assertThat(hose.volume(0.3048, 2900 * PSI) * 1e6).isCloseTo(at2900, within(1e-6));
    }

    /**
     * Interpretation letter 04-009678drn on 49 CFR 571.106: the middle set covers what is larger than "1/8 inch or 3 mm"
     * and smaller than "1/4 inch or 6 mm".
     */
    @ParameterizedTest
    @CsvSource({"3.3", "3.6", "5.4", "5.9"})
    void aDiameterBetweenTwoRowsBelongsToTheMiddleOne(double insideMillimetres) {
        assertThat(HoseExpansion.ceilingFor(insideMillimetres * 1e-3, false))
                .isEqualTo(HoseExpansion.THREE_SIXTEENTHS_REGULAR);
    }

    /** Closed form: straight lines through (0, 0), (2 MPa, 1 cm3/m), (4 MPa, 1.5 cm3/m). */
    @Test
    void straightBetweenPointsAndBeyond() {
        HoseExpansion hose = new HoseExpansion(List.of(new Point(2e6, 1e-6), new Point(4e6, 1.5e-6)));
        assertThat(hose.volume(2, 0)).isZero();
        assertThat(hose.volume(2, 1e6)).isCloseTo(1e-6, within(1e-18));
        assertThat(hose.volume(2, 3e6)).isCloseTo(2.5e-6, within(1e-18));
        assertThat(hose.volume(2, 6e6)).isCloseTo(4e-6, within(1e-18));
        assertThat(hose.beyondData(4e6)).isFalse();
        assertThat(hose.beyondData(4.1e6)).isTrue();
    }

    /** Constructed row B14 of the check values: two hoses of 0.35 m at 0.314 cm3/(m MPa) under 7 MPa, recomputed. */
    @Test
    void proportionalHose() {
        assertPrinted(HoseExpansion.proportional(1e6, 0.314e-6).volume(0.7, 7e6) * 1e6, "1.5386");
    }
}
