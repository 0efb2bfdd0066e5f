package org.brakewright.analysis.chain;

import org.brakewright.analysis.pedal.PedalState.GivesWay;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.kernel.roots.Crossing.Bounds;
import org.jspecify.annotations.Nullable;

/** Looks along the stroke of a mechanism for a place from which the pedal needs less force to go on. */
public final class GivingWay {
    private static final int STEPS = 64;

    /** A fall that a foot feels: springs alone stand against the pedal until the brakes are on, N. */
    private static final double FELT = 20;

    private GivingWay() {}

    /** Where it gives way before its stop (m of pad travel); null when more travel always takes more force. */
    public static @Nullable GivesWay of(Chain chain, double travelToStop) {
        if (chain.lever().straight()) {
            return null;
        }
        double last = lastThrust(chain, travelToStop);
        Pushed most = chain.pushed(0);
        for (int i = 1; i <= STEPS; i++) {
            double share = (double) i / STEPS;
            Pushed here = chain.pushed(last * share * share);
            if (force(here) < force(most) - FELT) {
                return new GivesWay(force(most), most.padTravel());
            }
            most = force(here) > force(most) ? here : most;
        }
        return null;
    }

    /** Thrust (N) at which the pedal meets its stop, or that of the largest force looked at. */
    private static double lastThrust(Chain chain, double travelToStop) {
        double most = chain.lastThrust(ChainCurve.MOST_PEDAL_FORCE);
        return chain.pushed(most).padTravel() <= travelToStop
                ? most
                : Crossing.rising(
                        thrust -> chain.pushed(thrust).padTravel() - travelToStop,
                        new Bounds(0, most, 1e-6 * most),
                        0,
                        most);
    }

    private static double force(Pushed pushed) {
        return pushed.state().pedalForce();
    }
}
