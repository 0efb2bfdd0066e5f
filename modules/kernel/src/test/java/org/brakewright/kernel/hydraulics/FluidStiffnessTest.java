package org.brakewright.kernel.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.kernel.Printed.assertPrinted;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far fluid and the air in it give way. */
class FluidStiffnessTest {
    /** A. Esposito, Fluid Power with Applications, example 2-11, p. 57: 10 in3 from 100 to 2000 psi, 250 000 psi. */
    @Test
    void oilUnderPressure() {
        assertPrinted(Liquid.compression(10, 2000 - 100, 250_000), "0.076");
    }

    /**
     * H. E. Merritt, Hydraulic Control Systems, sec. 2-2: D/t = 10, steel 30e6 psi, oil 250 000 psi, 1 % gas at 500 psi;
     * 700 psi when compressed fast. Inputs published, answer recomputed.
     */
    @ParameterizedTest
    @CsvSource({"500, 41095.9", "700, 53708.4"})
    void oilAirAndPipe(double gasModulus, String modulus) {
        assertPrinted(EffectiveModulus.thinPipe(250_000, 0.01, gasModulus, 10, 30e6), modulus);
    }

    /** M. G. Rabie, Fluid Power Engineering, eqs 2.49-2.57, p. 32: 1.7 GPa, n = 1.4. Formula published, answer recomputed. */
    @ParameterizedTest
    @CsvSource({
        "0.010, 0.1013, 14.0658, 14.0658",
        "0.010, 1, 129.446, 502.268",
        "0.010, 5, 497.284, 1476.8",
        "0.010, 10, 771.225, 1625.22",
        "0.001, 0.1013, 130.91, 130.91",
        "0.001, 1, 768.089, 1374.59",
        "0.001, 5, 1368.92, 1674.9",
        "0.001, 10, 1517.28, 1692.28"
    })
    void oilAirMixture(double gasShare, double megapascal, String constantShare, String shrinkingGas) {
        EffectiveModulus mixture = new EffectiveModulus(gasShare, 1.4, 1.7e9, 0.1013e6);
        assertPrinted(mixture.constantShare(megapascal * 1e6) / 1e6, constantShare);
        assertPrinted(mixture.shrinkingGas(megapascal * 1e6) / 1e6, shrinkingGas);
    }

    /** Closed form: without gas only the liquid is left. */
    @Test
    void withoutGasTheLiquidIsLeft() {
        assertThat(new EffectiveModulus(0, 1.0, 1.7e9, 101325).shrinkingGas(5e6))
                .isCloseTo(1.7e9, within(1e-3));
    }

    /** Closed form: at one, three and nine atmospheres above rest 1/2, 3/4 and 9/10 of the air are gone, isothermally. */
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0.5", "3, 0.75", "9, 0.9"})
    void slowlySqueezedAirFollowsBoyle(double atmospheres, double share) {
        double takenUp = EntrainedAir.takenUp(2e-6, atmospheres * EntrainedAir.ATMOSPHERE, EntrainedAir.ISOTHERMAL);
        assertThat(takenUp).isCloseTo(2e-6 * share, within(1e-20));
    }

    /** Closed form: what is left fulfils p V^n = constant. */
    @Test
    void quicklySqueezedAirIsStiffer() {
        double gauge = 4e6;
        double left = 1e-6 - EntrainedAir.takenUp(1e-6, gauge, EntrainedAir.ADIABATIC);
        double product = (EntrainedAir.ATMOSPHERE + gauge) * Math.pow(left, 1.4);
        assertThat(product).isCloseTo(EntrainedAir.ATMOSPHERE * Math.pow(1e-6, 1.4), withinPercentage(1e-9));
        assertThat(left).isGreaterThan(1e-6 - EntrainedAir.takenUp(1e-6, gauge, EntrainedAir.ISOTHERMAL));
    }
}
