package org.brakewright.analysis.resolve;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.Given;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.vehicle.Aero;
import org.brakewright.model.vehicle.EngineBraking;
import org.jspecify.annotations.Nullable;

/** Completes what air and engine do to the car; what the builder leaves out stays out. */
final class ResolveRoad {
    private final Values values;

    ResolveRoad(Values values) {
        this.values = values;
    }

    Optional<ResolvedCar.Aero> aero(@Nullable Aero aero, List<ResolvedLoadCase> cases) {
        if (aero == null) {
            return Optional.empty();
        }
        stands(aero.frontDownforce(), "front", cases, ResolvedLoadCase::frontMass);
        stands(aero.rearDownforce(), "rear", cases, ResolvedLoadCase::rearMass);
        return Optional.of(new ResolvedCar.Aero(
                values.need(aero.speed()),
                values.need(aero.frontDownforce()),
                values.need(aero.rearDownforce()),
                values.need(aero.drag())));
    }

    /** An axle that the air lifts off the road brakes nothing and means a slip of the pen. */
    private void stands(
            Given downforce, String axle, List<ResolvedLoadCase> cases, ToDoubleFunction<ResolvedLoadCase> mass) {
        double least = cases.stream().mapToDouble(mass).min().orElse(0) * Gravity.STANDARD;
        if (values.need(downforce) <= -least) {
            values.problem(
                    downforce.path(),
                    downforce.quantity().written(),
                    "This lift takes the " + axle + " axle off the road.",
                    String.format(Locale.ROOT, "less lift than the %s axle's least load, %.0f N", axle, least));
        }
    }

    /** The engine's force is the same whatever the car carries: that of the first load case. */
    Optional<ResolvedCar.EngineBraking> engineBraking(@Nullable EngineBraking engine, List<ResolvedLoadCase> cases) {
        return Optional.ofNullable(engine)
                .map(given -> new ResolvedCar.EngineBraking(
                        given.drivenAxle(),
                        values.need(given.deceleration()) * cases.getFirst().mass()));
    }
}
