package org.brakewright.analysis.vehicle;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.brakewright.analysis.hydraulics.Strokes;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.jspecify.annotations.Nullable;

/** Works out the hard stop of a build. */
public final class HardStops {
    private HardStops() {}

    /**
     * The hard stop of the heaviest load case; null when no pedal force gives it.
     *
     * @param budget travel by cause at a point, empty when nobody wants it
     */
    public static @Nullable HardStop of(
            ResolvedBuild build, OperatingPoints points, Function<OperatingPoint, List<TravelShare>> budget) {
        ResolvedLoadCase heaviest = build.car().heaviest();
        AxleLoads loads = Loads.of(build.car(), heaviest);
        Optional<OperatingPoint> point = points.atDeceleration(build.aims().hardStopG(), loads);
        if (point.isEmpty()) {
            return null;
        }
        return describe(build, heaviest.name(), point.get(), loads, budget.apply(point.get()));
    }

    private static HardStop describe(
            ResolvedBuild build, String loadCase, OperatingPoint point, AxleLoads loads, List<TravelShare> budget) {
        double toStop = build.pedal().travelToStop();
        double frontStroke = Strokes.front(build.apply());
        double rearStroke = Strokes.rear(build.apply());
        double reserve = toStop - point.pedalTravelM();
        double frontLeft = frontStroke - point.frontStrokeM();
        double rearLeft = rearStroke - point.rearStrokeM();
        return new HardStop(
                loadCase,
                point,
                point.frontForceN() / (point.frontForceN() + point.rearForceN()),
                loads.front(point.decelerationG()) / loads.weight(),
                reserve,
                reserve / toStop,
                frontLeft,
                frontLeft / frontStroke,
                rearLeft,
                rearLeft / rearStroke,
                budget);
    }
}
