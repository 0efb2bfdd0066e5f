package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Closed forms of the booster's three lines: 70 kPa on 0.04 m2 at 95 % add 2660 N at most. */
class VacuumBoosterTest {
    private static final VacuumBooster BOOSTER = new VacuumBooster(50, 4, 0.04, 70e3, 0.95);

    @Test
    void addsNothingUpToCrackIn() {
        assertThat(BOOSTER.output(0)).isZero();
        assertThat(BOOSTER.output(50)).isEqualTo(50);
        assertThat(BOOSTER.input(50)).isEqualTo(50);
    }

    /** 500 + (4 - 1)(500 - 50). */
    @Test
    void multipliesUpToRunOut() {
        assertThat(BOOSTER.output(500)).isCloseTo(1850, within(1e-9));
        assertThat(BOOSTER.input(1850)).isCloseTo(500, within(1e-9));
    }

    /** Run-out at 50 + 2660/3; above it the output is input + 2660. */
    @Test
    void addsItsWholeAssistAboveRunOut() {
        assertThat(BOOSTER.fullAssist()).isCloseTo(2660, within(1e-9));
        assertThat(BOOSTER.runOutInput()).isCloseTo(50 + 2660.0 / 3, within(1e-9));
        assertThat(BOOSTER.assist(BOOSTER.runOutInput())).isCloseTo(2660, within(1e-9));
        assertThat(BOOSTER.output(1500)).isCloseTo(4160, within(1e-9));
        assertThat(BOOSTER.input(4160)).isCloseTo(1500, within(1e-9));
    }

    @Test
    void passesThePushOnWithoutVacuum() {
        VacuumBooster failed = BOOSTER.withoutVacuum();
        for (double push : new double[] {0, 20, 50, 400, 3000}) {
            assertThat(failed.output(push)).isEqualTo(push);
            assertThat(failed.input(push)).isEqualTo(push);
        }
        assertThat(failed.runOutInput()).isEqualTo(50);
    }

    @Test
    void ratioOneIsNoBooster() {
        VacuumBooster none = new VacuumBooster(50, 1, 0.04, 70e3, 0.95);
        assertThat(none.output(500)).isEqualTo(500);
        assertThat(none.input(500)).isEqualTo(500);
        assertThat(none.runOutInput()).isEqualTo(50);
    }
}
