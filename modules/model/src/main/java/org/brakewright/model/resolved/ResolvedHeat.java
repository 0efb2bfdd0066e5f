package org.brakewright.model.resolved;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.hydraulics.FluidGrade;

/**
 * What heat works on, in SI.
 *
 * @param ambient K
 * @param rotatingShare energy of turning parts over that of the moving car
 * @param onwardSpeed of driving on after a schedule, m/s
 * @param front brakes of one front wheel
 * @param rear brakes of one rear wheel
 * @param fluid its boiling points
 * @param schedules what the car is put through, at least one
 */
public record ResolvedHeat(
        double ambient,
        double rotatingShare,
        double onwardSpeed,
        ResolvedBrakeHeat front,
        ResolvedBrakeHeat rear,
        Boiling fluid,
        List<ResolvedSchedule> schedules) {

    /**
     * Boiling points of the fluid.
     *
     * @param grade empty when not given
     * @param dry from the bottle, K; empty when not given
     * @param wet from the bottle, K; empty when not given
     */
    public record Boiling(Optional<FluidGrade> grade, OptionalDouble dry, OptionalDouble wet) {}
}
