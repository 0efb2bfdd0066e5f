package org.brakewright.analysis.ledger;

import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.brakewright.analysis.heat.AxleHeat;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.heat.HotBrakes;
import org.jspecify.annotations.Nullable;

/**
 * What the verdict on heat stands on: the greatest of all schedules and axles.
 *
 * @param facePeakK of a rubbed face, K
 * @param fluidPeakK of the fluid behind a piston, K
 * @param hotEffortN of the hard stop where least is left of the brakes, N; null when no push gives it
 */
public record HeatHeadline(
        double facePeakK, double fluidPeakK, @Nullable Double hotEffortN) {

    /** The heat's part; null when no schedule was followed. */
    static @Nullable HeatHeadline of(@Nullable HeatState heat) {
        if (heat == null || heat.schedules().isEmpty()) {
            return null;
        }
        HotBrakes hot = heat.hot();
        return new HeatHeadline(
                greatest(heat, AxleHeat::facePeakK),
                greatest(heat, AxleHeat::fluidPeakK),
                hot == null ? null : hot.effortN());
    }

    private static double greatest(HeatState heat, ToDoubleFunction<AxleHeat> measure) {
        return heat.schedules().stream()
                .flatMap(schedule -> Stream.of(schedule.front(), schedule.rear()))
                .mapToDouble(measure)
                .max()
                .orElseThrow();
    }
}
