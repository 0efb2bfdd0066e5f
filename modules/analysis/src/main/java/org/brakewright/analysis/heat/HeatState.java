package org.brakewright.analysis.heat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * How hot the brakes get.
 *
 * @param ambientK temperature of the air and of everything at the start, K
 * @param loadCase the heaviest, which is driven
 * @param schedules each from cold brakes on
 * @param unsolved names of schedules whose temperatures could not be followed
 * @param hot the brakes at the moment of all schedules at which least is left of them; null when no push gave the hard stop
 */
public record HeatState(
        double ambientK,
        String loadCase,
        List<ScheduleHeat> schedules,
        List<String> unsolved,
        @Nullable HotBrakes hot) {}
