package org.brakewright.analysis.resolve;

import java.util.Optional;
import org.brakewright.model.hydraulics.MeteringValve;
import org.brakewright.model.hydraulics.ProportioningValve;
import org.brakewright.model.resolved.ResolvedApply.Metering;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedApply.Valves;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;

/** Completes the valves between master and wheels. */
final class ResolveValves {
    private static final String KNEE = "apply.proportioning_valve.knee";
    private static final String SLOPE = "apply.proportioning_valve.slope";

    private final Values values;

    ResolveValves(Values values) {
        this.values = values;
    }

    Valves valves(
            @Nullable ProportioningValve first, @Nullable ProportioningValve second, @Nullable MeteringValve metering) {
        return new Valves(
                first == null ? tried() : Optional.of(valve(first)),
                Optional.ofNullable(second).map(this::valve),
                Optional.ofNullable(metering).map(this::metering));
    }

    private Valve valve(ProportioningValve valve) {
        return new Valve(
                values.need(valve.knee()),
                values.need(valve.slope()),
                valve.line() == null ? AxleEnd.REAR : valve.line(),
                Boolean.TRUE.equals(valve.adjustable()));
    }

    /** A valve in the rear line that is only tried, as a cure. */
    private Optional<Valve> tried() {
        if (!values.overridden(KNEE) || !values.overridden(SLOPE)) {
            return Optional.empty();
        }
        Default never = Default.estimate(0, 0, 0, "");
        return Optional.of(
                new Valve(values.take(null, KNEE, never), values.take(null, SLOPE, never), AxleEnd.REAR, true));
    }

    private Metering metering(MeteringValve valve) {
        double opening = values.need(valve.opening());
        double blend = values.need(valve.blend());
        if (blend <= opening) {
            values.problem(
                    "apply.metering_valve.blend",
                    Values.written(valve.blend()),
                    "The metering valve would be fully open before it begins to open.",
                    "more than opening, " + Values.written(valve.opening()));
            return new Metering(opening, opening + 1);
        }
        return new Metering(opening, blend);
    }
}
