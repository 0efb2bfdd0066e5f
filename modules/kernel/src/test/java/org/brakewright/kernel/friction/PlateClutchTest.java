package org.brakewright.kernel.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;
import static org.brakewright.kernel.friction.PadContact.UNIFORM_PRESSURE;
import static org.brakewright.kernel.friction.PadContact.UNIFORM_WEAR;

import org.brakewright.kernel.WorkedExample;
import org.junit.jupiter.api.Test;

class PlateClutchTest {
    /** Row E1: V. B. Bhandari, Design of Machine Elements, example 11.1. */
    @Test
    void singlePairByUniformWear() {
        PlateClutch clutch = new PlateClutch(1, 0.2, 0.050, 0.100);
        double force = clutch.clampForceAtPressure(1e6, UNIFORM_WEAR);
        double torque = clutch.torque(force, UNIFORM_WEAR);
        assertPrinted(force, "15707.963");
        assertPrinted(torque * 1e3, "235619.45");
        assertPrinted(2 * Math.PI * 750 / 60 * torque / 1e3, "18.505508");
    }

    /** Row E3: U. C. Jindal, Machine Design, example 22-1, which prints one face; of two it is twice that. */
    @Test
    void engagement() {
        PlateClutch printed = new PlateClutch(1, 0.28, 0.070, 0.110);
        double force = printed.clampForceAtPressure(0.1e6, UNIFORM_WEAR);
        double torque = printed.torque(force, UNIFORM_WEAR);
        double speed = 2 * Math.PI * 300 / 60;
        assertPrinted(force, "1759.3");
        assertPrinted(torque, "44.33");
        assertPrinted(torque * speed, "1393");
        double time = speed * 7.2 / torque;
        assertPrinted(time, "5.1");
        assertPrinted(torque * (speed * time - speed * time / 2), "3553.06");
        assertPrinted(new PlateClutch(2, 0.28, 0.070, 0.110).torque(force, UNIFORM_WEAR), "88.6683");
    }

    /** Row E4: U. C. Jindal, Machine Design, example 22-5, six pairs by uniform pressure. */
    @Test
    void severalPlatesByUniformPressure() {
        PlateClutch clutch = new PlateClutch(6, 0.25, 0.050, 0.080);
        double torque = 15e3 / (2 * Math.PI * 1400 / 60);
        double force = clutch.clampForce(torque, UNIFORM_PRESSURE);
        assertPrinted(torque, "102.314");
        assertPrinted(force, "1031.1");
        assertPrinted(clutch.greatestPressure(force, UNIFORM_PRESSURE) / 1e6, "0.084");
    }

    /** Row E5: T. H. Wentzell, Machine Design, example 16.1, 120 lb on 9 and 12 in. */
    @Test
    void customaryUnits() {
        double inch = 0.0254;
        double pound = 4.4482216152605;
        PlateClutch clutch = new PlateClutch(1, 0.3, 9 * inch, 12 * inch);
        double torque = clutch.torque(120 * pound, UNIFORM_WEAR) / (pound * inch);
        assertPrinted(torque, "378");
        assertPrinted(torque * 2000 / 63000, "12");
    }

    /** Uniform pressure always carries more, and on a narrow ring as much. */
    @Test
    void uniformWearIsTheSafeSide() {
        PlateClutch wide = new PlateClutch(2, 0.3, 0.04, 0.12);
        assertThat(wide.torque(1000, UNIFORM_PRESSURE)).isGreaterThan(wide.torque(1000, UNIFORM_WEAR));
        PlateClutch narrow = new PlateClutch(2, 0.3, 0.1199, 0.12);
        assertThat(narrow.torque(1000, UNIFORM_PRESSURE)).isCloseTo(narrow.torque(1000, UNIFORM_WEAR), within(1e-4));
    }

    @Test
    void workedExample() {
        WorkedExample page = WorkedExample.of("clutch-torque");
        PlateClutch clutch = new PlateClutch(
                (int) page.si("faces"), page.si("friction"), page.si("inner radius"), page.si("outer radius"));
        double force = page.si("clamp force");
        page.holds("torque, uniform wear", clutch.torque(force, UNIFORM_WEAR));
        page.holds("torque, uniform pressure", clutch.torque(force, UNIFORM_PRESSURE));
        page.holds("greatest pressure, uniform wear", clutch.greatestPressure(force, UNIFORM_WEAR));
        page.holds("greatest pressure, uniform pressure", clutch.greatestPressure(force, UNIFORM_PRESSURE));
        page.holds("clamp force for the torque wanted", clutch.clampForce(page.si("torque wanted"), UNIFORM_WEAR));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new PlateClutch(0, 0.3, 0.1, 0.12)).hasMessageContaining("faces");
        assertThatThrownBy(() -> new PlateClutch(2, 0.3, 0.12, 0.12)).hasMessageContaining("innerRadius");
    }
}
