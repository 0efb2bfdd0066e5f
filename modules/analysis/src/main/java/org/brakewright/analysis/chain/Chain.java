package org.brakewright.analysis.chain;

import java.util.Arrays;
import org.brakewright.analysis.brake.AxleBrake;
import org.brakewright.analysis.hydraulics.ApplyChain;
import org.brakewright.analysis.hydraulics.LinePressures;
import org.brakewright.model.resolved.ResolvedBuild;

/** The whole way from the force at the pad to the brake forces of both axles, wheels turning, and back. */
public final class Chain {
    private final double rodForcePerPedalForce;
    private final ApplyChain apply;
    private final AxleBrake front;
    private final AxleBrake rear;

    private Chain(double rodForcePerPedalForce, ApplyChain apply, AxleBrake front, AxleBrake rear) {
        this.rodForcePerPedalForce = rodForcePerPedalForce;
        this.apply = apply;
        this.front = front;
        this.rear = rear;
    }

    /** The chain of a build. */
    public static Chain of(ResolvedBuild build) {
        return new Chain(
                build.pedal().ratio() * build.pedal().efficiency(),
                ApplyChain.of(build.apply()),
                AxleBrake.of(build.front(), build.car().frontTyreRadius()),
                AxleBrake.of(build.rear(), build.car().rearTyreRadius()));
    }

    /** The same car with a dead booster. */
    public Chain unassisted() {
        return new Chain(rodForcePerPedalForce, apply.unassisted(), front, rear);
    }

    /** State of the chain for a pedal force in N. */
    public ChainState at(double pedalForce) {
        LinePressures pressures = apply.at(pedalForce * rodForcePerPedalForce);
        return new ChainState(
                pedalForce,
                pressures.front(),
                pressures.rear(),
                front.force(pressures.front()),
                rear.force(pressures.rear()));
    }

    /** Pressure (Pa) in the rear line in front of any valve, for a pedal force in N. */
    public double rearBeforeValve(double pedalForce) {
        return apply.at(pedalForce * rodForcePerPedalForce).rearBeforeValve();
    }

    /** Pedal forces (N) at which something in the chain sets in or ends, rising. */
    double[] bends() {
        return Arrays.stream(apply.bends(front.thresholdPressure(), rear.thresholdPressure()))
                .map(rodForce -> rodForce / rodForcePerPedalForce)
                .sorted()
                .toArray();
    }
}
