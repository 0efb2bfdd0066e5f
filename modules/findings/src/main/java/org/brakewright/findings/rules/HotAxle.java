package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.brakewright.analysis.heat.AxleHeat;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.heat.ScheduleHeat;
import org.brakewright.findings.Facts;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedBrakeHeat;
import org.brakewright.model.resolved.ResolvedHeat;

/**
 * One axle on the schedule that is hardest on it.
 *
 * @param subject front or rear
 * @param heat what the schedule does to it
 * @param brake what it is made of
 */
record HotAxle(String subject, AxleHeat heat, ResolvedBrakeHeat brake) {

    /** Both axles, each on the schedule with its greatest value of a measure; none when no heat was followed. */
    static List<HotAxle> worst(Facts facts, ToDoubleFunction<AxleHeat> measure) {
        HeatState state = facts.analysis().heat();
        if (state == null || state.schedules().isEmpty()) {
            return List.of();
        }
        List<HotAxle> axles = new ArrayList<>();
        ResolvedHeat built = facts.build().heat().orElseThrow();
        Comparator<AxleHeat> byMeasure = Comparator.comparingDouble(measure);
        axles.add(new HotAxle(
                "front",
                state.schedules().stream()
                        .map(ScheduleHeat::front)
                        .max(byMeasure)
                        .orElseThrow(),
                built.front()));
        axles.add(new HotAxle(
                "rear",
                state.schedules().stream()
                        .map(ScheduleHeat::rear)
                        .max(byMeasure)
                        .orElseThrow(),
                built.rear()));
        return axles;
    }

    /** Key path of something that heat sees of this axle. */
    String path(String key) {
        return "heat." + subject + "." + key;
    }

    /** How well a limit of this axle is known. */
    Tag tag(Facts facts, String key) {
        return facts.assumed().getOrDefault(path(key), Tag.PART_SHEET);
    }
}
