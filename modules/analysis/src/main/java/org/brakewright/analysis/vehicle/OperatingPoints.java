package org.brakewright.analysis.vehicle;

import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.hydraulics.Strokes;
import org.brakewright.analysis.pedal.Travel;
import org.brakewright.analysis.pedal.TravelModel;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.model.resolved.ResolvedBuild;

/** Finds operating points of a car. */
public final class OperatingPoints {
    private final ResolvedBuild build;
    private final ChainCurve curve;
    private final TravelModel travel;

    /** The points of a build with its chain's curve and travel. */
    public OperatingPoints(ResolvedBuild build, ChainCurve curve, TravelModel travel) {
        this.build = build;
        this.curve = curve;
        this.travel = travel;
    }

    /**
     * The point at a deceleration (g) under axle loads.
     *
     * @return empty when no pedal force gives it
     */
    public Optional<OperatingPoint> atDeceleration(double decelerationG, AxleLoads loads) {
        OptionalDouble force = curve.pedalForce(decelerationG * loads.weight());
        return force.isEmpty() ? Optional.empty() : Optional.of(at(force.getAsDouble(), loads));
    }

    /** The point at a pedal force (N) under axle loads. */
    public OperatingPoint at(double pedalForce, AxleLoads loads) {
        ChainState state = curve.at(pedalForce);
        Travel moved = travel.at(state);
        double z = state.totalForce() / loads.weight();
        double front = state.frontForce() / loads.front(z);
        Double rear = loads.rear(z) > 0 ? state.rearForce() / loads.rear(z) : null;
        return new OperatingPoint(
                z,
                pedalForce,
                state.frontPressure(),
                state.rearPressure(),
                state.frontForce(),
                state.rearForce(),
                front,
                rear,
                rear == null ? null : z / Math.max(front, rear),
                moved.padM(),
                moved.frontStrokeM(),
                moved.rearStrokeM(),
                within(moved));
    }

    private boolean within(Travel moved) {
        return moved.padM() <= build.pedal().travelToStop()
                && moved.frontStrokeM() <= Strokes.front(build.apply())
                && moved.rearStrokeM() <= Strokes.rear(build.apply());
    }
}
