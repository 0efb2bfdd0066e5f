package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.junit.jupiter.api.Test;

/** From push to pressure to force, against worked examples. 1 lb/in2 over 1 lb and 1 in2 stays in its own units. */
class PressureChainTest {
    private static MasterCylinder ideal(double area) {
        return new MasterCylinder(area, 0, 1);
    }

    /** CORD / Michigan applied academics, Automotive Brakes, "Brake Work Example 19"; it takes 0.785 for pi/4. */
    @Test
    void pedalForceToCaliperPiston() {
        double push = 360 * 8; // N, pedal force and ratio of the example
        double pressure = ideal(Bore.area(0.030)).pressure(push);
        assertPrinted(push, "2880");
        assertPrinted(pressure / 1e6, "4.07437"); // recomputed
        assertThat(pressure / 1e4).isCloseTo(407.64, withinPercentage(0.1)); // N/cm2, pi/4 = 0.785
        assertPrinted(pressure * Bore.area(0.032), "3276.8"); // recomputed
        assertThat(pressure * Bore.area(0.032)).isCloseTo(3277.4, withinPercentage(0.05)); // published
    }

    /** A. Esposito, Fluid Power with Applications, example 3-4, p. 85 (textbook-companion transcript). */
    @Test
    void jackTradesForceForTravel() {
        double force = ideal(2).pressure(100) * 20; // lb; in2
        double travel = new MasterStroke(20, 0, 10).stroke(new MasterStroke(2, 0, 1).volume(1)); // in
        assertPrinted(force, "1000");
        assertPrinted(travel, "0.1");
        assertPrinted(force * travel, "100");
    }

    /** A. Esposito, same, example 3-5, p. 88; the transcript takes pi = 3.14 and rounds the pressure. */
    @Test
    void handPump() {
        double pressure = ideal(Bore.area(1.0)).pressure(25 * (8.0 / 2)); // lb, lever 8 in to 2 in
        assertPrinted(pressure, "127.324"); // recomputed
        assertThat(pressure).isCloseTo(127, withinPercentage(0.5)); // published
        double load = pressure * Bore.area(3.25);
        assertPrinted(load, "1056.25"); // recomputed
        assertThat(load).isCloseTo(1053, withinPercentage(0.5)); // published
        double strokes = Bore.area(3.25) * 10 / new MasterStroke(Bore.area(1.0), 0, 2).capacity();
        assertPrinted(strokes, "52.8125"); // recomputed
        assertPrinted(strokes, "52.8"); // published
    }

    /** A. Esposito, same, example 3-6, p. 91: 100 psi air on 20 in2 drives 1 in2 of oil. */
    @Test
    void airOverHydraulicIntensifier() {
        double pressure = ideal(1).pressure(ideal(20).push(100));
        assertPrinted(pressure, "2000");
        assertPrinted(ideal(25).push(pressure), "50000");
    }

    /** Constructed row B18 of the check values: 420 N, ratio 5.2, efficiency 0.92, bar 0.55 front; recomputed. */
    @Test
    void twoMastersUnderABar() {
        double push = 420 * 5.2;
        assertPrinted(new MasterCylinder(Bore.area(0.01905), 0, 0.92).pressure(push * 0.55) / 1e6, "3.87725");
        assertPrinted(new MasterCylinder(Bore.area(0.02064), 0, 0.92).pressure(push * 0.45) / 1e6, "2.70236");
    }

    /** Closed form: 60 N of spring leave 940 N, of which 90 % press on 400 mm2. */
    @Test
    void springAndSealTakeTheirPart() {
        MasterCylinder master = new MasterCylinder(400e-6, 60, 0.9);
        assertThat(master.pressure(1000)).isCloseTo(2.115e6, within(1e-6));
        assertThat(master.pressure(60)).isZero();
        assertThat(master.pressure(0)).isZero();
        assertThat(master.push(0)).isEqualTo(60);
    }

    /** Closed form: 1 mm lost of 30 mm on 300 mm2 leaves 8.7 cm3; 3 cm3 need 1 + 10 mm. */
    @Test
    void strokeBecomesVolumeAfterThePort() {
        MasterStroke master = new MasterStroke(300e-6, 0.001, 0.030);
        assertThat(master.capacity()).isCloseTo(8.7e-6, within(1e-18));
        assertThat(master.stroke(3e-6)).isCloseTo(0.011, within(1e-15));
        assertThat(master.left(3e-6)).isCloseTo(0.019, within(1e-15));
        assertThat(master.left(9e-6)).isCloseTo(-0.001, within(1e-15));
        assertThat(master.volume(0.0005)).isZero();
        assertThat(master.volume(0.1)).isCloseTo(8.7e-6, within(1e-18));
    }

    /** Closed form: a metre of water under standard gravity (ISO 80000-3). */
    @Test
    void headOfAMetreOfWater() {
        assertThat(Head.pressure(1, 1000)).isEqualTo(9806.65);
        assertThat(Bore.diameter(Bore.area(0.0206))).isCloseTo(0.0206, within(1e-16));
    }
}
