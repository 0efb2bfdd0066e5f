package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Valves in the line. */
class ValveTest {
    /** T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 3, example problem 2 (from memory), valve 290/0.3, psi. */
    @ParameterizedTest
    @CsvSource({"100, 100", "200, 200", "300, 293", "400, 323", "500, 353", "600, 383", "700, 413"})
    void proportioningTable(double applied, String rear) {
        assertPrinted(new ProportioningValve(290, 0.3).outlet(applied), rear);
    }

    /** Constructed row B16 of the check values, recomputed: knee 2.0 MPa, slope 0.30. */
    @Test
    void proportioningInSi() {
        ProportioningValve valve = new ProportioningValve(2.0e6, 0.30);
        assertPrinted(valve.outlet(4.83e6) / 1e6, "2.849");
        assertPrinted(valve.inlet(3.0e6).orElseThrow() / 1e6, "5.33333");
    }

    /** Closed form: slope 0 never lets more than the knee through, slope 1 is no valve. */
    @Test
    void limiterAndOpenPipe() {
        ProportioningValve limiter = new ProportioningValve(2e6, 0);
        assertThat(limiter.outlet(9e6)).isEqualTo(2e6);
        assertThat(limiter.inlet(2e6)).hasValue(2e6);
        assertThat(limiter.inlet(2.1e6)).isEmpty();
        assertThat(new ProportioningValve(2e6, Double.MIN_VALUE).inlet(3e6)).isEmpty();
        assertThat(new ProportioningValve(2e6, 1).outlet(9e6)).isCloseTo(9e6, within(1e-8));
        assertThat(new ProportioningValve(2e6, 1).inlet(9e6).orElseThrow()).isCloseTo(9e6, within(1e-8));
    }

    /** Closed form: from 0.8 MPa up in a line to 4.0 MPa at 4.0 MPa, so 2.0 MPa half way, at 2.4 MPa. */
    @Test
    void meteringHoldsOffThenCatchesUp() {
        MeteringValve valve = new MeteringValve(0.8e6, 4.0e6);
        assertThat(valve.outlet(0)).isZero();
        assertThat(valve.outlet(0.8e6)).isZero();
        assertThat(valve.outlet(2.4e6)).isCloseTo(2.0e6, within(1e-8));
        assertThat(valve.outlet(4.0e6)).isCloseTo(4.0e6, within(1e-8));
        assertThat(valve.outlet(7.0e6)).isEqualTo(7.0e6);
        assertThat(valve.inlet(0)).isEqualTo(0.8e6);
        assertThat(valve.inlet(2.0e6)).isCloseTo(2.4e6, within(1e-8));
        assertThat(valve.inlet(7.0e6)).isEqualTo(7.0e6);
    }

    /** Closed form; 2 psi and 10 psi are the usual ratings for discs and drums (common practice, no source). */
    @Test
    void residualKeepsNoMoreThanTheLineHad() {
        ResidualValve valve = new ResidualValve(13.8e3);
        assertThat(valve.line(5e6, 5e6)).isEqualTo(5e6);
        assertThat(valve.line(0, 5e6)).isEqualTo(13.8e3);
        assertThat(valve.line(0, 8e3)).isEqualTo(8e3);
        assertThat(valve.line(0, 0)).isZero();
        assertThat(valve.holds(Head.pressure(0.5, 1060))).isTrue(); // 5.2 kPa
        assertThat(valve.holds(Head.pressure(1.5, 1060))).isFalse(); // 15.6 kPa
    }
}
