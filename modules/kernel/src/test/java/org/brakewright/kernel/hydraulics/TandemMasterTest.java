package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.brakewright.kernel.hydraulics.TandemMaster.Chamber;
import org.brakewright.kernel.hydraulics.TandemMaster.Failure;
import org.brakewright.kernel.hydraulics.TandemMaster.Pressures;
import org.junit.jupiter.api.Test;

/** Closed forms of the two-piston balance, 400 mm2, springs 100 N and 60 N, strokes 18 mm and 16 mm, 1 mm lost each. */
class TandemMasterTest {
    private static final TandemMaster MASTER =
            new TandemMaster(400e-6, new Chamber(100, 0.001, 0.018), new Chamber(60, 0.001, 0.016), 1);

    /** The floating piston: p1 A + S1 = p2 A + S2, and the push piston: F = p1 A + S1. */
    @Test
    void bothPistonsAreInBalance() {
        Pressures pressures = MASTER.pressures(1300, Failure.NONE);
        assertThat(pressures.primary() * 400e-6 + 100).isCloseTo(1300, within(1e-9));
        assertThat(pressures.secondary() * 400e-6 + 60).isCloseTo(1300, within(1e-9));
    }

    /** Between the springs' forces only the weaker spring's chamber has pressure. */
    @Test
    void theWeakerSpringGivesWayFirst() {
        Pressures pressures = MASTER.pressures(80, Failure.NONE);
        assertThat(pressures.primary()).isZero();
        assertThat(pressures.secondary()).isCloseTo(20 / 400e-6, within(1e-9));
    }

    @Test
    void aFailedCircuitHasNoPressureAndLeavesTheOther() {
        Pressures sound = MASTER.pressures(1300, Failure.NONE);
        assertThat(MASTER.pressures(1300, Failure.PRIMARY)).isEqualTo(new Pressures(0, sound.secondary()));
        assertThat(MASTER.pressures(1300, Failure.SECONDARY)).isEqualTo(new Pressures(sound.primary(), 0));
    }

    /** 2 cm3 are 5 mm and 1.2 cm3 are 3 mm on 400 mm2, plus a millimetre each to close the port. */
    @Test
    void rodTravelAddsUpAndAFailureCostsAWholeChamber() {
        assertThat(MASTER.rodTravel(2e-6, 1.2e-6, Failure.NONE)).isCloseTo(0.006 + 0.004, within(1e-15));
        assertThat(MASTER.rodTravel(2e-6, 1.2e-6, Failure.PRIMARY)).isCloseTo(0.018 + 0.004, within(1e-15));
        assertThat(MASTER.rodTravel(2e-6, 1.2e-6, Failure.SECONDARY)).isCloseTo(0.006 + 0.016, within(1e-15));
    }

    /** 17 mm and 15 mm of useful stroke hold 6.8 cm3 and 6.0 cm3. */
    @Test
    void aChamberRunsOutBeyondItsVolume() {
        assertThat(MASTER.primaryLeft(2e-6)).isCloseTo(0.012, within(1e-15));
        assertThat(MASTER.primaryLeft(7.0e-6)).isNegative();
        assertThat(MASTER.secondaryLeft(1.2e-6)).isCloseTo(0.012, within(1e-15));
        assertThat(MASTER.secondaryLeft(6.1e-6)).isNegative();
    }
}
