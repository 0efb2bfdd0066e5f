package org.brakewright.analysis.resolve;

import java.util.List;
import java.util.Optional;
import org.brakewright.model.Build;
import org.brakewright.model.brake.WheelBrake;
import org.brakewright.model.heat.BrakeHeat;
import org.brakewright.model.heat.Heat;
import org.brakewright.model.hydraulics.Fluid;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBrakeHeat;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedHeat;
import org.brakewright.model.resolved.ResolvedHeat.Boiling;
import org.brakewright.model.resolved.ResolvedSchedule;
import org.jspecify.annotations.Nullable;

/** Completes what heat works on; nothing when the builder names no schedule. */
final class ResolveHeat {
    private static final BrakeHeat UNKNOWN = new BrakeHeat(
            null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null);

    private final Values values;

    ResolveHeat(Values values) {
        this.values = values;
    }

    Optional<ResolvedHeat> heat(Build build, ResolvedCar car, ResolvedBrake front, ResolvedBrake rear) {
        Heat heat = build.heat();
        if (heat == null) {
            return Optional.empty();
        }
        List<ResolvedSchedule> schedules = new ResolveSchedules(values, car.topSpeed()).all(heat.schedules());
        return Optional.of(new ResolvedHeat(
                values.take(heat.ambient(), "heat.ambient", HeatDefaults.AMBIENT),
                values.take(heat.rotatingShare(), "heat.rotating_share", HeatDefaults.ROTATING_SHARE),
                values.take(heat.onwardSpeed(), "heat.onward_speed", HeatDefaults.ONWARD_SPEED),
                axle("front", heat.front(), build.front(), front),
                axle("rear", heat.rear(), build.rear(), rear),
                boiling(build.fluid()),
                schedules));
    }

    private ResolvedBrakeHeat axle(String axle, @Nullable BrakeHeat given, WheelBrake written, ResolvedBrake resolved) {
        BrakeHeat heat = given == null ? UNKNOWN : given;
        return new ResolveBrakeHeat(values, axle, heat).brake(written, resolved);
    }

    private Boiling boiling(@Nullable Fluid fluid) {
        if (fluid == null) {
            return new Boiling(Optional.empty(), values.maybe(null), values.maybe(null));
        }
        Boiling points = new Boiling(
                Optional.ofNullable(fluid.grade()),
                values.maybe(fluid.dryBoilingPoint()),
                values.maybe(fluid.wetBoilingPoint()));
        if (fluid.dryBoilingPoint() != null
                && fluid.wetBoilingPoint() != null
                && points.wet().orElseThrow() >= points.dry().orElseThrow()) {
            values.problem(
                    "fluid.wet_boiling_point",
                    Values.written(fluid.wetBoilingPoint()),
                    "Fluid with water in it does not boil later than dry fluid.",
                    "less than dry_boiling_point, " + Values.written(fluid.dryBoilingPoint()));
        }
        return points;
    }
}
