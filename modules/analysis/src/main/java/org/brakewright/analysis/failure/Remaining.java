package org.brakewright.analysis.failure;

import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.hydraulics.Strokes;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.vehicle.AxleEnd;

/**
 * How much of a push arrives before pedal or masters are at their ends.
 *
 * @param pushed the car at the push, or at that part of it at which the first end is met
 * @param reachesStop whether an end is met before the push is used up
 */
record Remaining(Pushed pushed, boolean reachesStop) {

    /** What a chain gives of a push (N) at the pad. */
    static Remaining of(ResolvedBuild build, Chain chain, double push) {
        Pushed all = chain.atPedalForce(push);
        if (beyondEnd(build, chain, all) <= 0) {
            return new Remaining(all, false);
        }
        double thrust = Crossing.between(
                        tried -> beyondEnd(build, chain, chain.pushed(tried)),
                        0,
                        all.state().thrust())
                .orElse(0);
        return new Remaining(chain.pushed(thrust), true);
    }

    /** Brake force over that of the whole car under the same push; 0 while that has none. */
    static double share(Pushed left, Pushed whole) {
        double force = whole.state().totalForce();
        return force == 0 ? 0 : left.state().totalForce() / force;
    }

    /** How far (m) pedal or masters would go through their ends; below zero while all have travel left. */
    private static double beyondEnd(ResolvedBuild build, Chain chain, Pushed pushed) {
        double beyond = pushed.padTravel() - build.pedal().travelToStop();
        if (chain.apply().endsPush(AxleEnd.FRONT)) {
            beyond = Math.max(beyond, pushed.frontStroke() - Strokes.front(build.apply()));
        }
        if (chain.apply().endsPush(AxleEnd.REAR)) {
            beyond = Math.max(beyond, pushed.rearStroke() - Strokes.rear(build.apply()));
        }
        return beyond;
    }
}
