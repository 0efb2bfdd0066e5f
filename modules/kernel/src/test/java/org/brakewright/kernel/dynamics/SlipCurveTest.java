package org.brakewright.kernel.dynamics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.brakewright.kernel.WorkedExample;
import org.junit.jupiter.api.Test;

/** Formula: H. B. Pacejka, Tire and Vehicle Dynamics (from memory). */
class SlipCurveTest {
    @Test
    void holdsThePage() {
        WorkedExample page = WorkedExample.of("tire-slip");
        SlipCurve curve = SlipCurve.of(page.si("peak slip"), page.si("sliding share"));
        page.holds("shape", curve.shape());
        page.holds("stiffness", curve.stiffness());
        page.holds("share there", curve.share(page.si("slip")));
    }

    /** What the curve is made from: 1 at its peak and less on both sides of it, the sliding share at full slip. */
    @Test
    void hasItsPeakAndItsEndWhereTheyWereAsked() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 500; i++) {
            double peak = random.nextDouble(0.02, 0.4);
            double sliding = random.nextDouble(0.5, 0.95);
            SlipCurve curve = SlipCurve.of(peak, sliding);
            assertThat(curve.share(peak)).isCloseTo(1, within(1e-12));
            assertThat(curve.share(0.9 * peak)).isLessThan(1);
            assertThat(curve.share(1.1 * peak)).isLessThan(1);
            assertThat(curve.share(1)).isCloseTo(sliding, within(1e-12));
            assertThat(curve.share(-peak)).isCloseTo(-1, within(1e-12));
        }
    }

    /** Closed form: near no slip the sine and the arc tangent are their arguments. */
    @Test
    void risesFromNothingWithItsOwnSlope() {
        SlipCurve curve = SlipCurve.of(0.1, 0.8);
        assertThat(curve.share(1e-7) / 1e-7).isCloseTo(curve.shape() * curve.stiffness(), within(1e-6));
    }

    @Test
    void refusesWhatNoTireDoes() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlipCurve.of(0, 0.8))
                .withMessageContaining("peakSlip");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SlipCurve.of(0.1, 1))
                .withMessageContaining("slidingShare");
    }
}
