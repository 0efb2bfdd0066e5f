package org.brakewright.kernel.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MaterialTest {

    /** Handbook ranges of grey flake iron as the check values hold them (from memory). */
    @ParameterizedTest
    @CsvSource({"20, 460, 540, 45, 55", "200, 460, 540, 45, 55", "500, 580, 620, 38, 50"})
    void ironStaysWithinHandbookRanges(double celsius, double lowHeat, double highHeat, double lowK, double highK) {
        double t = celsius + 273.15;
        assertThat(GreyIron.specificHeat(t)).isBetween(lowHeat, highHeat);
        assertThat(GreyIron.conductivity(t)).isBetween(lowK, highK);
        assertThat(GreyIron.DENSITY).isBetween(7100.0, 7250.0);
    }

    /** Stored heat is the integral of the specific heat, here by the trapezoidal rule, which is exact for a straight line. */
    @Test
    void storedHeatIsTheIntegral() {
        double sum = 0;
        for (int t = 300; t < 900; t++) {
            sum += 0.5 * (GreyIron.specificHeat(t) + GreyIron.specificHeat(t + 1));
        }
        assertThat(GreyIron.heat(900) - GreyIron.heat(300)).isCloseTo(sum, within(1e-6));
        assertThat(GreyIron.heated(300, sum)).isCloseTo(900, within(1e-9));
    }

    /**
     * Air at atmospheric pressure as tabulated by F. P. Incropera, D. P. DeWitt, Fundamentals of Heat and Mass Transfer, table A.4 (from memory):
     * density kg/m3, viscosity uPa s, conductivity mW/(m K), Prandtl.
     */
    @ParameterizedTest
    @CsvSource({
        "300, 1.1614, 18.46, 26.3, 0.707",
        "400, 0.8711, 23.01, 33.8, 0.690",
        "500, 0.6964, 27.01, 40.7, 0.684",
        "700, 0.4975, 33.88, 52.4, 0.695"
    })
    void airIsThatOfTheTables(double t, double density, double viscosity, double conductivity, double prandtl) {
        Air air = Air.at(t);
        assertThat(air.density()).isCloseTo(density, withinPercentage(1.5));
        assertThat(air.viscosity() * 1e6).isCloseTo(viscosity, withinPercentage(2.5));
        assertThat(air.conductivity() * 1e3).isCloseTo(conductivity, withinPercentage(2.5));
        assertThat(air.prandtl()).isCloseTo(prandtl, withinPercentage(3.5));
    }

    /** The published branches jump by a quarter; the blend has neither a jump nor a place where more air cools less. */
    @Test
    void theBlendRisesWithoutAJump() {
        Air air = Air.at(373.15);
        double before = DiscConvection.coefficient(air, 0.28, 10);
        for (double speed = 10.01; speed < 40; speed += 0.01) {
            double here = DiscConvection.coefficient(air, 0.28, speed);
            assertThat(here).isGreaterThan(before).isLessThan(before * 1.003);
            before = here;
        }
    }

    @Test
    void theVaneBlendRisesWithoutAJump() {
        Air air = Air.at(373.15);
        VaneConvection vane = new VaneConvection(0.012, 0.06);
        double before = vane.coefficient(air, 3);
        for (double speed = 3.01; speed < 60; speed += 0.01) {
            double here = vane.coefficient(air, speed);
            assertThat(here).isGreaterThan(before).isLessThan(before * 1.005);
            before = here;
        }
    }

    @Test
    void refusesWhatNoBrakeIs() {
        RotorSurface surface = new RotorSurface.Disc(0.28, 0.1, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Rotor(0, surface, 0.1, 0.5, 0.06))
                .withMessageContaining("mass")
                .withMessageContaining("0.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Linings(-1, 2000, 0.01, 2, 1))
                .withMessageContaining("capacity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Radiation.flux(1.2, 500, 300))
                .withMessageContaining("emissivity");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Air.at(Double.NaN))
                .withMessageContaining("temperature");
    }
}
