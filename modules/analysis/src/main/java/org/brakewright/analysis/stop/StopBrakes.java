package org.brakewright.analysis.stop;

import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.stop.StopMotion.Locked;
import org.brakewright.analysis.stop.StopMotion.Torques;

/**
 * What the brakes do over a stop: the push through the chain, and what heat leaves of it.
 *
 * @param push of the driver
 * @param frontRadius rolling radius, m
 * @param rearRadius rolling radius, m
 */
record StopBrakes(PedalRamp push, double frontRadius, double rearRadius) {

    /** Torques of both axles at a time (s) in a state. */
    Torques torques(double time, double[] state) {
        ChainState chain = push.at(time);
        return new Torques(chain.frontForce() * frontRadius, chain.rearForce() * rearRadius);
    }

    /** Writes the rates of a state at a time (s). */
    void rates(double time, StopMotion motion, Locked locked, double[] state, double[] rates) {
        motion.rates(torques(time, state), locked, state, rates);
    }

    /** Times (s) at which the push or what it gives bends. */
    double[] bends() {
        return push.bends();
    }
}
