package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Strength and swelling of tube. */
class TubeTest {
    private static final Tube BRAKE_TUBE = new Tube(4.75e-3, 0.71e-3);

    /** A. Esposito, Fluid Power with Applications, example 10-3, p. 371: OD 1.250 in, ID 1.060 in, 55 000 psi, factor 8. */
    @Test
    void workingPressureInPsi() {
        double working = new Tube(1.250, (1.250 - 1.060) / 2).barlowInside(55_000) / 8;
        assertPrinted(working, "1232.31"); // recomputed
        assertPrinted(working, "1232"); // published
    }

    /** A. Esposito, same, example 10-5, p. 389: ID and wall in mm, 379 MPa, factor 8; recomputed, published bar. */
    @ParameterizedTest
    @CsvSource({"20, 1, 47.375, 47.4", "24, 2, 78.9583, 79"})
    void workingPressureInBar(double inside, double wall, String recomputed, String published) {
        double bar = new Tube((inside + 2 * wall) * 1e-3, wall * 1e-3).barlowInside(379e6) / 8 / 1e5;
        assertPrinted(bar, recomputed);
        assertPrinted(bar, published);
    }

    /** Row B12 of the check values: Lame's closed-end cylinder (S. Timoshenko; R. Roark), 10 MPa, our numbers recomputed. */
    @Test
    void stressesInABrakeTube() {
        assertPrinted(BRAKE_TUBE.hoopStressAtBore(10e6) / 1e6, "29.3294");
        assertPrinted(BRAKE_TUBE.barlowStress(10e6) / 1e6, "33.4507");
        assertPrinted(BRAKE_TUBE.thinWallStress(10e6) / 1e6, "23.4507");
        assertPrinted(BRAKE_TUBE.axialStress(10e6) / 1e6, "9.66471");
    }

    /** Row B12 again: 3 m, 205 GPa, 0.29; beside it the liquid, 1.7 GPa. */
    @Test
    void swellingOfABrakeTube() {
        double volume = BRAKE_TUBE.boreVolume(3);
        double swell = BRAKE_TUBE.swell(3, 10e6, 205e9, 0.29);
        assertPrinted(volume * 1e6, "26.1276");
        assertPrinted(swell / volume, "0.00030689");
        assertPrinted(swell * 1e9, "8.0183");
        assertPrinted(Liquid.compression(volume, 10e6, 1.7e9) * 1e9, "153.692");
    }

    /**
     * Closed form for a thin tube with closed ends: dV/V = (p r/(E t)) (5/2 - 2 nu), from hoop stress p r/t and axial
     * stress p r/(2 t).
     */
    @Test
    void thinTubeSwellsAsTheThinFormulaSays() {
        Tube thin = new Tube(0.1, 1e-5);
        double relative = thin.swell(1, 1e3, 200e9, 0.3) / thin.boreVolume(1);
        assertThat(relative).isCloseTo(1e3 * 0.05 / (200e9 * 1e-5) * (2.5 - 0.6), withinPercentage(0.1));
    }

    /**
     * Barlow on the outside diameter in MPa, sizes in mm, strengths of 90-10 copper-nickel (ASTM B466, from memory) and of
     * double-wall steel (SAE J527); the burst figures are derived by hand. 4.75 mm steel is held against its psi figure,
     * 12 400.
     */
    @ParameterizedTest
    @CsvSource({
        "4.75, 0.70, 260, 77",
        "4.75, 0.70, 290, 85.5",
        "6.00, 0.70, 260, 61",
        "6.00, 0.70, 290, 68",
        "6.35, 0.71, 260, 58",
        "6.35, 0.71, 290, 65",
        "7.94, 0.89, 260, 58",
        "7.94, 0.89, 290, 65"
    })
    void burstOfUsualTubes(double outside, double wall, double strength, String burst) {
        assertPrinted(new Tube(outside * 1e-3, wall * 1e-3).barlowOutside(strength * 1e6) / 1e6, burst);
    }

    /** Closed form: Lame lies between the two Barlow formulas, and inverts its own stress. */
    @Test
    void lameLiesBetweenBarlows() {
        double lame = BRAKE_TUBE.pressureForHoop(290e6);
        assertThat(lame).isBetween(BRAKE_TUBE.barlowOutside(290e6), BRAKE_TUBE.barlowInside(290e6));
        assertThat(BRAKE_TUBE.hoopStressAtBore(lame)).isCloseTo(290e6, withinPercentage(1e-9));
    }
}
