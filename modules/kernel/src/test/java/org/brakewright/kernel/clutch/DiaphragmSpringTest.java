package org.brakewright.kernel.clutch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DiaphragmSpringTest {
    private static final double E = 206e9;
    private static final BellevilleSpring DISC = new BellevilleSpring(0.110, 0.086, 0.0025, 0.0042, E, 0.3);
    private static final DiaphragmSpring SPRING = new DiaphragmSpring(DISC, 0.108, 0.0885, 0.024);

    /**
     * Stock springs of series A, E 206 GPa and Poisson 0.3: diameters, thickness, cone height in mm and load at three quarters
     * of it in N, as a spring maker's table prints them after DIN 2093 (secondary source). The norm's own constant and the
     * rounded deflection of the table move the load by up to 2 %.
     */
    @ParameterizedTest
    @CsvSource({
        "8, 4.2, 0.4, 0.2, 210",
        "10, 5.2, 0.5, 0.25, 329",
        "14, 7.2, 0.8, 0.3, 813",
        "20, 10.2, 1.1, 0.45, 1530",
        "25, 12.2, 1.5, 0.55, 2910",
        "31.5, 16.3, 1.75, 0.7, 3900"
    })
    void carriesWhatTheNormsTableSays(double outer, double inner, double thickness, double cone, double load) {
        BellevilleSpring stock = new BellevilleSpring(outer / 2e3, inner / 2e3, thickness / 1e3, cone / 1e3, E, 0.3);
        assertThat(stock.force(0.75 * cone / 1e3)).isCloseTo(load, withinPercentage(2.1));
    }

    /** Second method: strain energy of a section that turns as a whole, summed over it, and its slope over the deflection. */
    @ParameterizedTest
    @ValueSource(doubles = {0.0005, 0.001, 0.0025, 0.0032, 0.0055})
    void isTheSlopeOfItsStrainEnergy(double deflection) {
        double step = 1e-6;
        double slope = (energy(deflection + step) - energy(deflection - step)) / (2 * step);
        assertThat(DISC.force(deflection)).isCloseTo(slope, withinPercentage(0.3));
    }

    private static double energy(double deflection) {
        double width = DISC.outerRadius() - DISC.innerRadius();
        double neutral = width / Math.log(DISC.outerRadius() / DISC.innerRadius());
        double cone = DISC.coneHeight() / width;
        double turn = deflection / width;
        int cells = 200;
        double energy = 0;
        for (int i = 0; i < cells; i++) {
            double radius = DISC.innerRadius() + (i + 0.5) * width / cells;
            for (int j = 0; j < cells; j++) {
                double height = ((j + 0.5) / cells - 0.5) * DISC.thickness();
                double strain = ((neutral - radius) * turn * (cone - turn / 2) + height * turn) / radius;
                energy += strain * strain * radius;
            }
        }
        return Math.PI * E / (1 - 0.09) * energy * width / cells * DISC.thickness() / cells;
    }

    /** Closed form: the slope of the formula is zero at h -+ sqrt((h^2 - 2 t^2)/3). */
    @ParameterizedTest
    @ValueSource(ints = {-1, 1})
    void turnsWhereItsSlopeIsZero(int side) {
        double turn = 0.0042 + side * Math.sqrt((0.0042 * 0.0042 - 2 * 0.0025 * 0.0025) / 3);
        double there = DISC.force(turn);
        assertThat(DISC.force(turn - 1e-5)).matches(force -> side * force > side * there);
        assertThat(DISC.force(turn + 1e-5)).matches(force -> side * force > side * there);
    }

    /** Closed form: below h = t sqrt(2) it never falls. */
    @Test
    void aFlatConeOnlyGetsStiffer() {
        BellevilleSpring flat = new BellevilleSpring(0.110, 0.086, 0.0025, 0.0025 * Math.sqrt(2), E, 0.3);
        for (double s = 1e-4; s < 0.008; s += 1e-4) {
            assertThat(flat.force(s + 1e-4)).isGreaterThan(flat.force(s));
        }
    }

    /** Pressed at its very edges the diaphragm is the disc. */
    @Test
    void pressedAtItsEdgesIsTheDisc() {
        DiaphragmSpring spring = new DiaphragmSpring(DISC, 0.110, 0.086, 0.024);
        assertThat(spring.force(0.003)).isCloseTo(DISC.force(0.003), within(1e-9));
    }

    /** Balance of work from free to a deflection: both sums over the way are the same energy. */
    @Test
    void doesTheWorkOfItsDisc() {
        double gain = 0.024 / 0.0195;
        double onPlate = 0;
        double onDisc = 0;
        for (int i = 0; i < 1000; i++) {
            onPlate += SPRING.force((i + 0.5) * 4e-6) * 4e-6;
            onDisc += DISC.force((i + 0.5) * 4e-6 * gain) * 4e-6 * gain;
        }
        assertThat(onPlate).isCloseTo(onDisc, withinPercentage(1e-9));
    }

    /** Levers: (88.5 - 24)/(108 - 88.5). */
    @Test
    void fingersAreALever() {
        assertThat(SPRING.fingerRatio()).isCloseTo(64.5 / 19.5, within(1e-12));
    }

    @Test
    void refusesWhatCannotBe() {
        assertThatThrownBy(() -> new DiaphragmSpring(DISC, 0.08, 0.0885, 0.024)).hasMessageContaining("pressRadius");
        assertThatThrownBy(() -> new DiaphragmSpring(DISC, 0.108, 0.02, 0.024)).hasMessageContaining("fulcrumRadius");
        assertThatThrownBy(() -> new BellevilleSpring(0.05, 0.06, 0.002, 0.003, E, 0.3))
                .hasMessageContaining("outerRadius is 0.05");
        assertThatThrownBy(() -> new BellevilleSpring(0.05, 0.04, 0.002, 0.003, E, 0.5))
                .hasMessageContaining("poissonRatio");
    }
}
