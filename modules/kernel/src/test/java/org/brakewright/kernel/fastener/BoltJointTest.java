package org.brakewright.kernel.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoltJointTest {
    /** T. H. Wentzell, Machine Design, examples 6.1 and 6.2; inch and pound, a consistent set. */
    @Test
    void preloadTorqueAndTurn() {
        ScrewThread thread = new ScrewThread(0.75, 0.1, 0.334);
        Preload preload = Preload.ofProof(thread, 85_000, 0.85);
        assertPrinted(preload.torque(0.2), "3619.73");
        assertPrinted(preload.stretch(5, 30e6), "0.01204");
        assertPrinted(Math.toDegrees(preload.turn(5, 30e6)), "43.35");
    }

    /** Stress areas as tabled in ISO 898-1 (mm2) and ASME B1.1 (in2); from memory. */
    @ParameterizedTest
    @CsvSource({"8, 1.25, 36.6", "10, 1.5, 58.0", "12, 1.75, 84.3", "16, 2, 157"})
    void metricStressAreas(double diameter, double pitch, String area) {
        assertPrinted(ScrewThread.metric(diameter / 1e3, pitch / 1e3).stressArea() * 1e6, area);
    }

    @ParameterizedTest
    @CsvSource({"0.25, 20, 0.0318", "0.375, 16, 0.0775", "0.5, 13, 0.1419", "0.75, 10, 0.334"})
    void inchStressAreas(double diameter, double threads, String area) {
        assertPrinted(ScrewThread.inch(diameter, 1 / threads).stressArea(), area);
    }

    /** While closed the bolt feels its share; the joint opens when the clamp is gone, then the bolt carries all. */
    @Test
    void aPullOnAClampedJoint() {
        ScrewThread thread = ScrewThread.metric(8e-3, 1.25e-3);
        Preload preload = new Preload(thread, 15_000);
        double share = new Grip(thread, 12e-3, 205e9, 205e9).boltShare();
        assertThat(share).isBetween(0.1, 0.4);
        double opens = preload.opens(share);
        assertThat(preload.underPull(opens, share)).isCloseTo(opens, within(1e-6));
        assertThat(preload.underPull(opens / 2, share)).isCloseTo(15_000 + share * opens / 2, within(1e-6));
        assertThat(preload.underPull(2 * opens, share)).isCloseTo(2 * opens, within(1e-6));
    }

    /** Shigley, 9th ed., equations 8-17 and 8-22, by hand for a 0.5 in bolt on a grip of 1.5 in of steel. */
    @Test
    void stiffnessOfClampedParts() {
        Grip grip = new Grip(ScrewThread.inch(0.5, 1.0 / 13), 1.5, 30e6, 30e6);
        // 0.5774 pi 30e6 0.5 / (2 ln(5 (0.8661 + 0.25)/(0.8661 + 1.25))) = 27.2093e6/(2 0.969702) = 14.0297e6
        assertThat(grip.partStiffness()).isCloseTo(14.0297e6, within(1e3));
        assertThat(grip.boltStiffness()).isCloseTo(30e6 * 0.1419 / 1.5, within(1e3));
    }

    /** Equal arms: 3/(2 (1 + 3)) of the pull; a far edge prises nothing. */
    @Test
    void prying() {
        assertThat(new Prying(0.03, 0.03).ratio()).isCloseTo(3.0 / 8, within(1e-12));
        assertThat(new Prying(0.03, 0.03).boltTension(800)).isCloseTo(1100, within(1e-9));
        assertThat(new Prying(0.01, 1).ratio()).isLessThan(1e-3);
        // moments of the flange: 300 N at 0.03 m over the bolt, 800 at 0.03 less that at the root
        assertThat(new Prying(0.03, 0.03).flangeMoment(800)).isCloseTo(15, within(1e-9));
    }
}
