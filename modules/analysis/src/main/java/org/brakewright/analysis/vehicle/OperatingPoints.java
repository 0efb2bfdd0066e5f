package org.brakewright.analysis.vehicle;

import java.util.Optional;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.hydraulics.Strokes;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.model.resolved.ResolvedBuild;

/** Finds operating points of a car. */
public final class OperatingPoints {
    private final ResolvedBuild build;
    private final ChainCurve curve;

    /** The points of a build with its chain's curve. */
    public OperatingPoints(ResolvedBuild build, ChainCurve curve) {
        this.build = build;
        this.curve = curve;
    }

    /**
     * The point at a deceleration (g) under axle loads.
     *
     * @return empty when no pedal force gives it
     */
    public Optional<OperatingPoint> atDeceleration(double decelerationG, AxleLoads loads) {
        return curve.reach(ChainState::totalForce, decelerationG * loads.weight())
                .map(pushed -> at(pushed, loads));
    }

    /** The point at a pedal force (N) under axle loads. */
    public OperatingPoint at(double pedalForce, AxleLoads loads) {
        return at(curve.pushed(pedalForce), loads);
    }

    private OperatingPoint at(Pushed pushed, AxleLoads loads) {
        ChainState state = pushed.state();
        double z = state.totalForce() / loads.weight();
        double front = state.frontForce() / loads.front(z);
        Double rear = loads.rear(z) > 0 ? state.rearForce() / loads.rear(z) : null;
        return new OperatingPoint(
                z,
                state.pedalForce(),
                state.frontPressure(),
                state.rearPressure(),
                state.frontForce(),
                state.rearForce(),
                front,
                rear,
                rear == null ? null : z / Math.max(front, rear),
                pushed.padTravel(),
                pushed.frontStroke(),
                pushed.rearStroke(),
                pushed.apply().bar().tilt(),
                within(pushed));
    }

    private boolean within(Pushed pushed) {
        return pushed.padTravel() <= build.pedal().travelToStop()
                && pushed.frontStroke() <= Strokes.front(build.apply())
                && pushed.rearStroke() <= Strokes.rear(build.apply());
    }
}
