package org.brakewright.kernel.tubing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Springback, flat length of sheet, mitred ends. */
class BentMetalTest {
    /** Row G8 of the check values (S. Kalpakjian, S. Schmid; formula from memory): mm and MPa, recomputed. */
    @Test
    void springbackOfSheet() {
        Springback sheet = new Springback(1.5, 280, 205e3);
        assertPrinted(sheet.sprungRadius(10), "10.2808");
        assertPrinted(sheet.angleKept(10), "0.974543");
        assertPrinted(Math.toDegrees(sheet.bendTo(Math.PI / 2, 10)), "92.351");
        assertPrinted(sheet.toolRadius(10), "9.73412");
    }

    /** Row G8's tube, R 15, D 4.76 mm: the tool found leaves the wanted radius; a stiffer metal springs less. */
    @Test
    void springbackOfTube() {
        Springback tube = new Springback(4.76, 280, 205e3);
        assertThat(tube.sprungRadius(tube.toolRadius(15))).isCloseTo(15, within(1e-9));
        assertThat(tube.angleKept(15)).isLessThan(new Springback(4.76, 280, 410e3).angleKept(15));
    }

    /** Closed form: at half of E t/Y the cubic is zero, the metal springs flat. */
    @Test
    void tooFlatToStayBent() {
        Springback sheet = new Springback(1, 1, 100);
        assertThat(sheet.sprungRadius(49.9)).isGreaterThan(10_000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> sheet.sprungRadius(50))
                .withMessageContaining("toolRadius");
    }

    /** Row G6 (Machinery's Handbook, from memory): t and R 1/16 in, right angle; recomputed. */
    @ParameterizedTest
    @CsvSource({"0.55, 0.350141, 0.1325", "0.64, 0.407437, 0.138125", "0.71, 0.452, 0.1425"})
    void rightAngleInSheet(double coefficient, String kFactor, String length) {
        double k = SheetBend.kFactor(coefficient);
        assertPrinted(k, kFactor);
        double sixteenth = 1.0 / 16;
        double allowance = new SheetBend(sixteenth, sixteenth, k).allowance(Math.PI / 2);
        // The handbook rounds pi/2 to 1.57: 0.0008 of the radius, 0.00005 in here.
        assertThat(allowance).isCloseTo(Double.parseDouble(length), within(0.0008 * sixteenth));
    }

    /** Closed form: unstretched middle and no thickness to speak of, deduction is the tube's gain of row G4, 6.43806 mm. */
    @Test
    void thinSheetIsDeductedAsTubeGains() {
        assertThat(new SheetBend(15, 1e-9, 0.5).deduction(Math.PI / 2)).isCloseTo(6.43806, within(1e-5));
    }

    /** Row G10: plane section of a cylinder, OD 25.4; recomputed. */
    @ParameterizedTest
    @CsvSource({"45, 25.4, 12.7, 6.35, -6.35", "30, 14.6647, 7.33235, 3.66617, -3.66617"})
    void mitre(double degrees, String depth, String at0, String at60, String at120) {
        MitreCut cut = new MitreCut(25.4, Math.toRadians(degrees));
        assertPrinted(cut.depth(), depth);
        assertPrinted(cut.edge(0), at0);
        assertPrinted(cut.edge(Math.PI / 3), at60);
        assertPrinted(cut.edge(2 * Math.PI / 3), at120);
    }

    /** Geometry: wrapped back on the tube, every point of the edge lies in the plane z = x tan(cut). */
    @Test
    void wrappedBackTheEdgeIsPlane() {
        double cut = Math.toRadians(37);
        for (int degrees = 0; degrees < 360; degrees += 5) {
            double around = Math.toRadians(degrees);
            double x = 9.5 * Math.cos(around);
            assertThat(new MitreCut(19, cut).edge(around)).isCloseTo(x * Math.tan(cut), within(1e-12));
        }
    }

    @Test
    void refusesWhatCannotBeCutOrBent() {
        assertThatIllegalArgumentException().isThrownBy(() -> new MitreCut(1, Math.PI / 2));
        assertThatIllegalArgumentException().isThrownBy(() -> new SheetBend(1, 1, 0.6));
        assertThatIllegalArgumentException().isThrownBy(() -> new BendArc(1, Math.PI));
    }
}
