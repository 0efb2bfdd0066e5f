package org.brakewright.analysis.stop;

import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.stop.StopMotion.Torques;

/**
 * What the brakes do over a stop: the push through the chain.
 *
 * @param push of the driver
 * @param frontRadius rolling radius, m
 * @param rearRadius rolling radius, m
 */
record StopBrakes(PedalRamp push, double frontRadius, double rearRadius) {

    /** Torques of both axles at a time (s). */
    Torques torques(double time) {
        ChainState chain = push.at(time);
        return new Torques(chain.frontForce() * frontRadius, chain.rearForce() * rearRadius);
    }

    /** Times (s) at which the push or what it gives bends. */
    double[] bends() {
        return push.bends();
    }
}
