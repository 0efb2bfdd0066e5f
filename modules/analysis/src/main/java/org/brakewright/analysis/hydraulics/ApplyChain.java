package org.brakewright.analysis.hydraulics;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.brakewright.analysis.hydraulics.Piston.Feeds;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;

/** From the thrust on the masters' side of the pedal to pressures, strokes and the balance bar's tilt, quasi-static. */
public sealed interface ApplyChain permits TwinChain, TandemChain, FailedTwinChain, AiredChain {

    /** Everything under a thrust (N) at the balance bar's bearing or at the booster's rod. */
    ApplyState at(double thrust);

    /**
     * Thrusts (N) at which a spring, a port, a valve, a wheel brake or the booster sets in or ends; near these where a bar
     * changes its share as it turns.
     */
    DoubleStream bends();

    /** Thrust (N) at which the booster has given all it can; empty without one. */
    default OptionalDouble runOut() {
        return OptionalDouble.empty();
    }

    /** Whether pressures rise in straight lines between the bends. */
    boolean straight();

    /** The largest force that a state leaves unbalanced, over the thrust: how well it was solved. */
    double imbalance(ApplyState state);

    /** The same car without its booster's help; itself when there is none. */
    ApplyChain unassisted();

    /** The same car with one piston's circuit open. */
    ApplyChain failed(AxleEnd piston);

    /** The same car with a share of air in the fluid of one piston's circuit, as if no master ever bottomed. */
    ApplyChain aired(AxleEnd piston, double share);

    /** The same car with a share of air in the fluid of one piston's circuit, whose master may bottom. */
    static ApplyChain withAir(ApplyChain whole, AxleEnd piston, double share) {
        return AiredChain.of(whole, piston, share);
    }

    /** Whether a piston ends the push when it bottoms; one whose circuit has failed passes the push on. */
    default boolean endsPush(AxleEnd piston) {
        return !(piston == AxleEnd.FRONT ? front() : rear()).feeds().isEmpty();
    }

    /** Piston that fills the front; with a diagonal split the one that fills the left front wheel. */
    Piston front();

    /** The other piston. */
    Piston rear();

    /** Travel of the rod (m) for one of a piston's stroke, the other one standing. */
    double rodTravelPerStroke(AxleEnd piston);

    /** The chain of a build's apply system. */
    static ApplyChain of(ResolvedBuild build) {
        ResolvedApply apply = build.apply();
        AxleLine front = AxleLine.of(AxleEnd.FRONT, apply.valves(), build.front(), build.frontCircuit());
        AxleLine rear = AxleLine.of(AxleEnd.REAR, apply.valves(), build.rear(), build.rearCircuit());
        return switch (apply) {
            case ResolvedApply.Twin twin ->
                TwinChain.of(twin, new Feeds(front, 1, rear, 0), new Feeds(front, 0, rear, 1));
            case ResolvedApply.Tandem tandem ->
                tandem.diagonal()
                        ? TandemChain.of(tandem, new Feeds(front, 0.5, rear, 0.5), new Feeds(front, 0.5, rear, 0.5))
                        : TandemChain.of(tandem, new Feeds(front, 1, rear, 0), new Feeds(front, 0, rear, 1));
        };
    }
}
