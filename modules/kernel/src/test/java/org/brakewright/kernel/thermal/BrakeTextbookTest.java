package org.brakewright.kernel.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** Rows D1, D2, D4, D5, D8, D10 and D11 of the check values. "Recomputed" agrees to 1e-6, "published" to its digits. */
class BrakeTextbookTest {
    private static final double RECOMPUTED = 1e-4;

    /** D1, VERIFIED: T. H. Wentzell, Machine Design, example 16.5: 3,500 lb from 73 ft/s, 40 lb of brakes of 93 ft lb/(lb F). */
    @Test
    void warmsTheBrakesOfD1() {
        double energy = 3500 * 73.0 * 73.0 / (2 * 32.2);
        assertThat(energy).isCloseTo(289619.57, within(0.005));
        double rise = SingleStop.meanRise(energy, 40, 93);
        assertThat(rise).isCloseTo(77.85471, withinPercentage(RECOMPUTED)).isCloseTo(77.85, within(0.005));
    }

    /** D2, VERIFIED: U. C. Jindal, Machine Design, example 23-5: 1,100 kg from 65 km/h, 10 % in turning parts, four brakes of 12 kg. */
    @Test
    void warmsTheDrumsOfD2() {
        double speed = 65 / 3.6;
        double energy = 1.1 * 1100 * speed * speed / 8;
        assertThat(energy).isCloseTo(49307.97, within(0.02));
        assertThat(SingleStop.meanRise(energy, 12, 460))
                .isCloseTo(8.9326, within(5e-5))
                .isCloseTo(8.93, within(0.005));
    }

    /** D4, VERIFIED: article "How hot do brakes get?": 3,000 lb from 88 ft/s, g 32.15, 0.0013 Btu per ft lb, 40 lb of 0.130 Btu/(lb F). */
    @Test
    void warmsTheRotorsOfD4() {
        double energy = 3000 * 88.0 * 88.0 / (2 * 32.15);
        assertThat(energy).isCloseTo(361306.4, within(0.05));
        assertThat(SingleStop.meanRise(0.0013 * energy, 40, 0.130)).isCloseTo(90.3, within(0.05));
        // with the exact Btu of 778.17 ft lb, as the row notes
        assertThat(SingleStop.meanRise(energy / 778.17, 40, 0.130)).isCloseTo(89.289, within(0.0005));
    }

    /** D5, CONSTRUCTED: closed form, 4 MW/m2 falling to nothing in 4 s, iron 7200/500/50; Limpert prints 0.527 for 0.5319 (from memory). */
    @Test
    void heatsTheFaceOfD5() {
        double effusivity = HeatPartition.effusivity(7200, 500, 50);
        assertThat(SingleStop.greatestFaceRise(4e6, 4, effusivity)).isCloseTo(317.178, within(0.0005));
        assertThat(SingleStop.faceRise(4e6, 4, effusivity, 4)).isCloseTo(224.278, within(0.0005));
        double coefficient = SingleStop.greatestFaceRise(1, 1, 1);
        assertThat(coefficient).isCloseTo(0.531923, within(5e-7)).isCloseTo(Math.sqrt(5.0 / 18), withinPercentage(1));
    }

    /** D8, FROM MEMORY: R. Limpert, Brake Design and Safety, ch. 3; D 0.280 m in air of 100 C; vane 12 by 60 mm at 6 m/s. */
    @Test
    void coolsAsInD8() {
        Air air = new Air(0.946, 2.18e-5, 0.0314, 0.70);
        assertThat(air.reynolds(12, 0.280)).isCloseTo(145806, within(0.5));
        assertThat(DiscConvection.coefficient(air, 0.280, 12)).isCloseTo(54.3182, within(5e-5));
        assertThat(DrumConvection.coefficient(air, 0.280, 12)).isCloseTo(31.0662, within(5e-5));
        assertThat(air.reynolds(25, 0.280)).isCloseTo(303761, within(0.5));
        assertThat(DiscConvection.coefficient(air, 0.280, 25)).isCloseTo(109.108, within(5e-4));
        assertThat(DrumConvection.coefficient(air, 0.280, 25)).isCloseTo(50.675, within(5e-4));
        double perNusselt = 0.0314 / 0.280;
        assertThat(DiscConvection.laminar(2.4e5) * perNusselt).isCloseTo(71.4473, within(5e-5));
        assertThat(DiscConvection.turbulent(2.4e5) * perNusselt).isCloseTo(90.3651, within(5e-5));
        VaneConvection vane = new VaneConvection(0.012, 0.060);
        double reynolds = air.reynolds(6, 0.012);
        assertThat(reynolds).isCloseTo(3124.4, within(0.05));
        assertThat(vane.coefficient(air, 6)).isCloseTo(37.0447, within(5e-5));
        assertThat(vane.turbulent(air, reynolds)).isCloseTo(44.8054, within(5e-5));
    }

    /** D10, CONSTRUCTED: Stefan and Boltzmann at 500 and 25 C, emissivity 0.55, 0.09 m2. */
    @Test
    void radiatesAsInD10() {
        double flux = Radiation.flux(0.55, 773.15, 298.15);
        assertThat(flux).isCloseTo(10897.3, within(0.05));
        assertThat(0.09 * flux).isCloseTo(980.753, within(0.001));
        assertThat(Radiation.coefficient(0.55, 773.15, 298.15)).isCloseTo(22.941598, within(1e-5));
    }

    /** D11, CONSTRUCTED: disc 7200/500/50 and pad 2600/1100/1.4; swept 0.072 m2, pads 0.0090 m2; 60 kW. */
    @Test
    void sharesAsInD11() {
        double disc = HeatPartition.effusivity(7200, 500, 50);
        double pad = HeatPartition.effusivity(2600, 1100, 1.4);
        assertThat(disc).isCloseTo(13416.4, within(0.05));
        assertThat(pad).isCloseTo(2001, within(0.5));
        double share = HeatPartition.rotorShare(disc, 0.072, pad, 0.0090);
        assertThat(share).isCloseTo(0.981698, within(5e-7));
        assertThat(HeatPartition.rotorShare(disc, 1, pad, 1)).isCloseTo(0.870212, within(5e-7));
        assertThat(share * 60e3 / 0.072).isCloseTo(0.818082e6, within(0.5));
    }
}
