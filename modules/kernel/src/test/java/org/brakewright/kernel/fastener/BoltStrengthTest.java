package org.brakewright.kernel.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoltStrengthTest {
    /** ISO 965-2, limits of 6g screws and 6H nuts in mm, from memory; the tables round tolerances to a series. */
    @ParameterizedTest
    @CsvSource({
        "6, 1, 5.794, 5.212, 5.500, 5.153",
        "8, 1.25, 7.760, 7.042, 7.348, 6.912",
        "10, 1.5, 9.732, 8.862, 9.206, 8.676",
        "12, 1.75, 11.701, 10.679, 11.063, 10.441"
    })
    void slackLimitsOfMetricThreads(
            double d, double pitch, double screwMajor, double screwPitch, double nutPitch, double nutMinor) {
        ThreadFit fit = ThreadFit.of(ScrewThread.metric(d / 1e3, pitch / 1e3));
        double rounding = 10e-6;
        assertThat(fit.screwMajor()).isCloseTo(screwMajor / 1e3, within(rounding));
        assertThat(fit.screwPitch()).isCloseTo(screwPitch / 1e3, within(rounding));
        assertThat(fit.nutPitch()).isCloseTo(nutPitch / 1e3, within(rounding));
        assertThat(fit.nutMinor()).isCloseTo(nutMinor / 1e3, within(rounding));
    }

    /**
     * Closed form: without tolerances the flanks of ISO 68-1 leave the nut's thread 7/8, the screw's thread 3/4 of a
     * pitch thick where they shear.
     */
    @Test
    void sharpThreads() {
        double d = 10e-3;
        double p = 1.5e-3;
        double middle = d - 0.6495 * p;
        double minor = d - 1.0825 * p;
        ThreadFit fit = new ThreadFit(p, d, middle, middle, minor);
        assertThat(fit.nutArea(1)).isCloseTo(Math.PI * d * 7 / 8, withinPercentage(0.01));
        assertThat(fit.screwArea(1)).isCloseTo(Math.PI * minor * 3 / 4, withinPercentage(0.01));
    }

    /**
     * Nuts of ISO 4032 (least heights in mm, from memory) break a bolt of class 8.8 before either thread strips when nut
     * and bolt are alike, as ISO 898-2 asks; half of one does not.
     */
    @ParameterizedTest
    @CsvSource({"6, 1, 4.9", "8, 1.25, 6.44", "10, 1.5, 8.04", "12, 1.75, 10.37"})
    void aNutOfFullHeightBreaksTheBolt(double d, double pitch, double height) {
        ScrewThread thread = ScrewThread.metric(d / 1e3, pitch / 1e3);
        BoltGrade grade = BoltGrade.CLASS_8_8;
        double breaks = grade.tensileStrength() * thread.stressArea();
        ThreadFit fit = ThreadFit.of(thread);
        assertThat(fit.strips(height / 1e3, grade.shearStrength(), grade.shearStrength()))
                .isGreaterThan(breaks);
        assertThat(fit.strips(height / 2e3, grade.shearStrength(), grade.shearStrength()))
                .isLessThan(breaks);
    }

    /**
     * Shigley, 9th ed., example 8-6, from memory: bearing of two bolts of 3/4 in on 1 in of a member of 71 ksi, factor
     * 1.5, holds 71 kip; inch and kip, a consistent set.
     */
    @Test
    void bearingOfALapJoint() {
        BoltHole hole = new BoltHole(0.75, 0.75, 1, 1.125);
        assertThat(hole.bearing(71.0 / 2)).isCloseTo(71 / 1.5, within(1e-9));
        // by hand: 35.5 kip along two lines of 0.75 in
        assertThat(hole.tearOut(35.5)).isCloseTo(35.5 / 1.5, within(1e-9));
    }

    /** Closed form: pure shear yields at one over the root of three, pressure is no tension. */
    @Test
    void shearAndTensionTogether() {
        ScrewThread thread = new ScrewThread(10e-3, 1.5e-3, 58e-6);
        assertThat(new BoltStress(thread, 0, 5800).equivalent()).isCloseTo(Math.sqrt(3) * 100e6, within(1e-3));
        assertThat(new BoltStress(thread, -5800, 0).equivalent()).isZero();
        assertThat(new BoltStress(thread, 5800, -5800).equivalent()).isCloseTo(200e6, within(1e-3));
    }

    /** Conversions of SAE J429: 85 and 120 ksi for grade 5, at 6.894757 MPa a ksi, as the standard's metric print rounds. */
    @Test
    void inchGrades() {
        assertThat(BoltGrade.SAE_5.proofStress()).isCloseTo(85 * 6.894757e6, withinPercentage(0.1));
        assertThat(BoltGrade.SAE_5.tensileStrength()).isCloseTo(120 * 6.894757e6, withinPercentage(0.1));
        assertThat(BoltGrade.SAE_8.proofStress()).isCloseTo(120 * 6.894757e6, withinPercentage(0.1));
    }

    @Test
    void whatNoJointCanHave() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BoltHole(8e-3, 7e-3, 1e-3, 20e-3))
                .withMessageContaining("hole");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BoltHole(8e-3, 9e-3, 1e-3, 4e-3))
                .withMessageContaining("edge");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ThreadFit(1e-3, 6e-3, 5.3e-3, 5.4e-3, 5.3e-3))
                .withMessageContaining("nutMinor");
    }
}
