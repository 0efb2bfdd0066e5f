package org.brakewright.kernel.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.brakewright.kernel.tubing.RightAngleBend.Metal;
import org.junit.jupiter.api.Test;

/** Strip over a punch. */
class RightAngleBendTest {
    /**
     * Row G7 of the check values: A. Ghosh, A. K. Mallik, Manufacturing Science, problem 9. The transcript of the book
     * prints 4121 N, 88.68 deg and 89.18 mm; the row recomputes them with more digits.
     */
    @Test
    void problemOfTheTextbook() {
        double radius = RightAngleBend.leastRadius(5e-3, 0.2);
        RightAngleBend bend = new RightAngleBend(5e-3, radius, new Metal(345e6, 517e6, 207e9));
        assertPrinted(1e3 * radius, "10.1556");
        assertPrinted(bend.force(20e-3, 25e-3, 0.1), "4121.97");
        assertPrinted(Math.toDegrees(bend.punchAngle()), "88.6816");
        assertPrinted(1e3 * bend.stock(50e-3), "89.1755");
    }

    /** Closed form: without hardening each half bears yield all over, M = Y (a^2 + b^2)/2 with a + b = t. */
    @Test
    void idealPlasticMetalBearsItsYield() {
        RightAngleBend bend = new RightAngleBend(1, 3, new Metal(100, 0, 1e9));
        assertThat(bend.moment()).isCloseTo(100 * (0.55 * 0.55 + 0.45 * 0.45) / 2, within(1e-9));
    }

    @Test
    void refusesWhatIsNoStrip() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> RightAngleBend.leastRadius(1, 2))
                .withMessageContaining("fractureStrain");
        assertThatIllegalArgumentException().isThrownBy(() -> new RightAngleBend(1, 0, new Metal(1, 1, 1)));
    }
}
