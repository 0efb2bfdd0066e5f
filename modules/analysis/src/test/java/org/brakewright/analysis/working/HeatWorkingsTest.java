package org.brakewright.analysis.working;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.brakewright.analysis.working.OpenedCar.operand;

import org.brakewright.analysis.heat.HotCars;
import org.brakewright.analysis.heat.ScheduleHeat;
import org.brakewright.kernel.thermal.GreyIron;
import org.junit.jupiter.api.Test;

/** Every formula of heat that can be put in again by hand gives the step's own result. */
class HeatWorkingsTest {
    private static ScheduleHeat only(OpenedCar open) {
        return requireNonNull(open.analysis().heat()).schedules().getFirst();
    }

    /** 1/2 x 1000 x 1.05 x 30^2 J; rotors of 5 kg; shares by effusivity and area (row D11's form). */
    @Test
    void theHottestFaceEndsAtTheGreatestOfBothAxles() {
        OpenedCar open = OpenedCar.of(HotCars.STOP);
        Step brought = open.step("rotor_temperature", "heat_brought");
        assertThat(brought.result()).isCloseTo(0.5 * operand(brought, "m") * 1.05 * 900, within(1.0));
        Step share = open.step("rotor_temperature", "rotor_share");
        double rotor = operand(share, "A_r") * operand(share, "k");
        assertThat(share.result()).isCloseTo(rotor / (rotor + operand(share, "A_l")), withinPercentage(1e-9));
        Step mean = open.step("rotor_temperature", "rotor_mean");
        assertThat(operand(mean, "Q"))
                .isEqualTo(open.step("rotor_temperature", "rotor_kept").result());
        assertThat(mean.result())
                .isCloseTo(GreyIron.heated(operand(mean, "T_a"), operand(mean, "Q") / 5), within(1e-6));
        Step face = open.steps("rotor_temperature").getLast();
        assertThat(face.result())
                .isCloseTo(operand(face, "T") + operand(face, "dT"), within(1e-9))
                .isEqualTo(Math.max(
                        only(open).front().facePeakK(), only(open).rear().facePeakK()));
        assertThat(operand(face, "T")).isLessThanOrEqualTo(mean.result());
        assertThat(operand(face, "dT")).isPositive();
    }

    @Test
    void theHottestFluidEndsAtTheGreatestOfBothAxles() {
        OpenedCar open = OpenedCar.of(HotCars.HILL);
        Step fluid = open.steps("fluid_boiling").getLast();
        ScheduleHeat heat = only(open);
        assertThat(fluid.result())
                .isEqualTo(Math.max(heat.front().fluidPeakK(), heat.rear().fluidPeakK()))
                .isLessThan(operand(fluid, "T_l"));
        assertThat(operand(fluid, "T_l"))
                .isEqualTo(open.step("fluid_boiling", "lining_peak").result());
    }

    /** tau = m c (T - T_a)/P; the closed form of one lump with that tau, held still, is near what was followed: within a third (no source). */
    @Test
    void coolingStartsAtTheTimeConstant() {
        OpenedCar open = OpenedCar.of(HotCars.RULE);
        Step tau = open.step("cooling_time", "time_constant");
        assertThat(tau.result())
                .isCloseTo(
                        operand(tau, "m") * operand(tau, "c") * operand(tau, "T - T_a") / operand(tau, "P"),
                        withinPercentage(1e-6));
        Step cooled = open.steps("cooling_time").getLast();
        assertThat(cooled.result()).isEqualTo(requireNonNull(only(open).coolingTimeS()));
        double excess = operand(cooled, "T") - operand(cooled, "T_a");
        double lump = operand(cooled, "tau") * Math.log(excess / (373.15 - operand(cooled, "T_a")));
        assertThat(cooled.result()).isCloseTo(lump, withinPercentage(35));
    }

    @Test
    void brakesThatStayColdOpenNoCooling() {
        assertThat(OpenedCar.of(HotCars.STOP.with("heat.schedules[0].from_speed: 5 m/s"))
                        .workings())
                .extracting(Working::key)
                .contains("rotor_temperature", "fluid_boiling")
                .doesNotContain("cooling_time");
    }
}
