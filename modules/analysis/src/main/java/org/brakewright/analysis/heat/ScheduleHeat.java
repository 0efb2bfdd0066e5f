package org.brakewright.analysis.heat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one schedule does.
 *
 * @param name the builder's name for it
 * @param durationS without the standing after it, s
 * @param energyJ that all brakes turned into heat, J
 * @param energyErrorShare heat neither stored nor given to the air, over that energy
 * @param front one front wheel
 * @param rear one rear wheel
 * @param coolingTimeS of driving on gently until both rotors are back at 100 °C, s; 0 when they never passed it, null when two hours are not enough
 * @param samples over time, with the standing after it
 */
public record ScheduleHeat(
        String name,
        double durationS,
        double energyJ,
        double energyErrorShare,
        AxleHeat front,
        AxleHeat rear,
        @Nullable Double coolingTimeS,
        List<HeatSample> samples) {}
