package org.brakewright.kernel.structure.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SectionsTest {
    /**
     * Torsion of rectangles: J = c2 a b3 and T/tau = c1 a b2. S. Timoshenko, J. Goodier, Theory of Elasticity, section
     * 109, from memory; Roark's formulas, which the code uses, claim 4 % for stress.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.208, 0.1406", "2, 0.246, 0.229", "4, 0.282, 0.281", "10, 0.312, 0.312"})
    void torsionOfRectangles(double ratio, double c1, double c2) {
        double b = 0.006;
        Section flat = Sections.flat(ratio * b, b);
        assertThat(flat.torsionConstant()).isCloseTo(c2 * ratio * b * b * b * b, withinPercentage(0.5));
        assertThat(flat.torsionModulus()).isCloseTo(c1 * ratio * b * b * b, withinPercentage(0.7));
        Section lying = Sections.flat(b, ratio * b);
        assertThat(lying.torsionConstant()).isCloseTo(flat.torsionConstant(), withinPercentage(1e-9));
        assertThat(lying.bending().y()).isCloseTo(flat.bending().z(), withinPercentage(1e-9));
    }

    /** pi d4/64, pi d4/32, pi d3/16. */
    @Test
    void roundBar() {
        Section bar = Sections.roundBar(0.02);
        assertThat(bar.bending().y()).isCloseTo(Math.PI / 64 * 1.6e-7, withinPercentage(1e-9));
        assertThat(bar.torsionConstant()).isCloseTo(Math.PI / 32 * 1.6e-7, withinPercentage(1e-9));
        assertThat(bar.torsionModulus()).isCloseTo(Math.PI / 16 * 8e-6, withinPercentage(1e-9));
    }

    /** With walls as thin as foil J = a3 t and I = 2/3 a3 t; cut open, next to nothing is left of J. */
    @Test
    void thinSquareTube() {
        Section tube = Sections.squareTube(0.0401, 1e-4);
        assertThat(tube.torsionConstant()).isCloseTo(0.04 * 0.04 * 0.04 * 1e-4, withinPercentage(1e-6));
        assertThat(tube.bending().y()).isCloseTo(2.0 / 3 * 0.04 * 0.04 * 0.04 * 1e-4, withinPercentage(0.1));
        Section open = OpenSections.channel(0.04, 0.04, 1e-4);
        assertThat(open.torsionConstant()).isLessThan(tube.torsionConstant() / 1e4);
    }

    @Test
    void wallsThatDoNotFit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sections.roundTube(0.02, 0.01))
                .withMessageContaining("wall");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sections.rectangularTube(0.04, 0.02, 0.012))
                .withMessageContaining("wall");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OpenSections.angle(0.03, 0.004, 0.005))
                .withMessageContaining("thickness");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> OpenSections.channel(0.03, 0.01, 0.005))
                .withMessageContaining("thickness");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Sections.flat(Double.NaN, 0.01))
                .withMessageContaining("width");
    }
}
