package org.brakewright.kernel.structure.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.junit.jupiter.api.Test;

/** Columns in the units of the sources, a consistent set each time. */
class ColumnTest {
    /** R. C. Hibbeler, Mechanics of Materials, example 13.2; kip and inch. The area does not enter. */
    @Test
    void rolledSection() {
        EulerColumn strong = new EulerColumn(29, 4.43, 144, 29e3);
        EulerColumn weak = new EulerColumn(9.32, 4.43, 100.8, 29e3);
        assertPrinted(Math.min(strong.criticalLoad(), weak.criticalLoad()), "263");
    }

    /** R. C. Hibbeler, same, example 13.3; SI; factor of safety 3. */
    @Test
    void aluminiumColumn() {
        EulerColumn strong = new EulerColumn(61.3e-6, 7.5e-3, 10, 70e9);
        EulerColumn weak = new EulerColumn(23.2e-6, 7.5e-3, 3.5, 70e9);
        assertPrinted(Math.min(strong.criticalLoad(), weak.criticalLoad()) / 3 / 1e3, "141");
    }

    /** R. C. Hibbeler, same, example 13.4 (offset from memory); kip and inch. */
    @Test
    void secantLoadAtYield() {
        EulerColumn column = new EulerColumn(11.7 * 3.53 * 3.53, 11.7, 288, 29e3);
        EccentricColumn eccentric = new EccentricColumn(column, 9, 4.125);
        assertPrinted(eccentric.loadAt(36), "88.4");
    }

    /** F. Beer, E. R. Johnston, J. DeWolf, Mechanics of Materials, sample problem 10.2; kip and inch; free-standing. */
    @Test
    void freeStandingTube() {
        double length = ColumnEnds.FIXED_AND_FREE.factor() * 8 * 12;
        EulerColumn column = new EulerColumn(8, 3.54, length, 29e3);
        double allowed = column.criticalLoad() / 2;
        assertPrinted(allowed, "31.056698");
        EccentricColumn eccentric = new EccentricColumn(column, 0.75, 2);
        assertPrinted(eccentric.bow(allowed), "0.939");
        // 8.77308 (1 + 0.75 2 3.54/8 2.25217) by hand; the source has 21.98, since it rounds r to 1.50
        assertThat(eccentric.greatestStress(allowed)).isCloseTo(21.8877, within(5e-4));
    }

    /** Johnson's parabola meets Euler's curve at half the yield stress, in value and slope, and ends at the yield. */
    @Test
    void stubbyColumnsYield() {
        double yield = 250e6;
        double young = 205e9;
        double radius = Math.sqrt(1e-8 / 1e-4);
        double meets = radius * Math.PI * Math.sqrt(2 * young / yield);
        EulerColumn slender = new EulerColumn(1e-8, 1e-4, meets * 1.0001, young);
        EulerColumn stubby = new EulerColumn(1e-8, 1e-4, meets * 0.9999, young);
        assertThat(slender.failureLoad(yield)).isCloseTo(yield / 2 * 1e-4, within(5.0));
        assertThat(stubby.failureLoad(yield)).isCloseTo(yield / 2 * 1e-4, within(5.0));
        EulerColumn block = new EulerColumn(1e-8, 1e-4, 1e-4, young);
        assertThat(block.failureLoad(yield)).isCloseTo(yield * 1e-4, within(1.0));
    }

    /** The root of tan x = x, 4.49341. */
    @Test
    void factorOfFixedAndHinged() {
        double x = Math.PI / ColumnEnds.FIXED_AND_HINGED.factor();
        assertThat(Math.tan(x) / x).isCloseTo(1, within(2e-4));
    }

    @Test
    void beyondTheCriticalLoadThereIsNoAnswer() {
        EulerColumn column = new EulerColumn(8, 3.54, 192, 29e3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new EccentricColumn(column, 0.1, 2).greatestStress(column.criticalLoad()))
                .withMessageContaining("load");
    }
}
