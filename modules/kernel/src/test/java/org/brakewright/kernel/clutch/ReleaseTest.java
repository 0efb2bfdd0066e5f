package org.brakewright.kernel.clutch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.brakewright.kernel.clutch.OverCentreSpring.Action;
import org.brakewright.kernel.hydraulics.Bore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Master to bearing, against the check values; the pedal's spring against its own energy. */
class ReleaseTest {
    /** Row E6 of the check values: 3/4 in master, 22.23 mm slave, fork 2:1, 3 % of the volume lost in the line. */
    @Test
    void externalSlaveAndFork() {
        HydraulicRelease release = new HydraulicRelease(Bore.area(0.01905), Bore.area(0.02223), 2.0, 0.93);
        double stroke = (0.140 - 0.006) / 5.5;
        double travel = release.bearingTravel(stroke, 0.03 * stroke * release.masterArea());
        double pressure = release.pressure(1500);
        assertPrinted(stroke * 1e3, "24.3636");
        assertPrinted(travel * 2.0 * 1e3, "17.355");
        assertPrinted(travel * 1e3, "8.67751");
        assertPrinted(pressure / 1e6, "2.07783");
        assertPrinted(pressure * release.masterArea() / (5.5 * 0.95), "113.345");
        assertPrinted(5.5 * release.masterStroke(1, 0), "14.979");
    }

    /** Scenario D9 of the needs: an annulus of 2.0 and 1.375 in before three masters. */
    @ParameterizedTest
    @CsvSource({"0.75, 1.0, 6.8", "1.0, 1.2, 14.4", "0.875, 1.12, 10.3"})
    void concentricSlave(double boreInch, double strokeInch, String travelMillimetres) {
        double ring = HydraulicRelease.ring(2.0 * 0.0254, 1.375 * 0.0254);
        HydraulicRelease release = new HydraulicRelease(Bore.area(boreInch * 0.0254), ring, 1, 1);
        assertPrinted(release.bearingTravel(strokeInch * 0.0254, 0) * 1e3, travelMillimetres);
    }

    /** What goes in as work comes out as work when nothing is lost. */
    @Test
    void losesNoWorkWithoutLosses() {
        HydraulicRelease release = new HydraulicRelease(3e-4, 9e-4, 1.7, 1);
        double push = release.pressure(1200) * 3e-4;
        assertThat(push * release.masterStroke(0.01, 0)).isCloseTo(1200 * 0.01, within(1e-9));
        assertThat(release.bearingTravel(release.masterStroke(0.01, 2e-7), 2e-7))
                .isCloseTo(0.01, within(1e-15));
    }

    /** The moment is the slope of the stored energy k (L - L0)^2/2. */
    @ParameterizedTest
    @EnumSource(Action.class)
    void momentIsTheSlopeOfTheEnergy(Action action) {
        double freeLength = action == Action.PULLS ? 0.120 : 0.095;
        OverCentreSpring spring = new OverCentreSpring(action, 8e3, freeLength, 0.05, 0.11);
        for (double angle = -0.5; angle <= 0.5; angle += 0.1) {
            double before = spring.length(angle - 1e-6) - freeLength;
            double after = spring.length(angle + 1e-6) - freeLength;
            double released = 8e3 / 2 * (before * before - after * after) / 2e-6;
            assertThat(spring.moment(angle)).isCloseTo(released, within(1e-5));
        }
    }

    @ParameterizedTest
    @EnumSource(Action.class)
    void holdsBackBeforeDeadCentreAndHelpsBeyond(Action action) {
        OverCentreSpring spring = new OverCentreSpring(action, 8e3, action == Action.PULLS ? 0.120 : 0.095, 0.05, 0.11);
        assertThat(spring.moment(-0.1)).isNegative();
        assertThat(spring.moment(0)).isZero();
        assertThat(spring.moment(0.1)).isEqualTo(-spring.moment(-0.1)).isPositive();
    }

    @Test
    void aLooseSpringDoesNothing() {
        assertThat(new OverCentreSpring(Action.PULLS, 8e3, 0.2, 0.05, 0.11).moment(0.2))
                .isZero();
        assertThat(new OverCentreSpring(Action.PUSHES, 8e3, 0.05, 0.05, 0.11).moment(0.2))
                .isZero();
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> HydraulicRelease.ring(0.03, 0.04)).hasMessageContaining("outerDiameter");
        assertThatThrownBy(() -> new HydraulicRelease(1e-4, 1e-4, 0, 1)).hasMessageContaining("forkRatio is 0.0");
        assertThatThrownBy(() -> new HydraulicRelease(1e-4, 1e-4, 1, 1.1)).hasMessageContaining("efficiency");
        assertThatThrownBy(() -> new OverCentreSpring(Action.PUSHES, 1, 0.1, 0.05, 0.05))
                .hasMessageContaining("anchorRadius");
    }
}
