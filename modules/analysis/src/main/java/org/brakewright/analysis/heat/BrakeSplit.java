package org.brakewright.analysis.heat;

import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;

/**
 * How a braking force shares itself over the axles as installed, whatever is left of each axle's friction.
 *
 * <p>Reads the chain's broken line: forces at a pressure stay in proportion to friction, so a share of the way along
 * each piece is found in closed form. Beyond the end of the curve the last split is kept.
 */
final class BrakeSplit {
    private final double[] front;
    private final double[] rear;

    BrakeSplit(ChainCurve curve) {
        front = curve.bends().stream().mapToDouble(ChainState::frontForce).toArray();
        rear = curve.bends().stream().mapToDouble(ChainState::rearForce).toArray();
    }

    /**
     * Front force over the whole.
     *
     * @param force of both axles, N
     * @param frontLeft front force at the same pressure over that of the working brake
     * @param rearLeft the same at the rear
     */
    double frontShare(double force, double frontLeft, double rearLeft) {
        double beforeFront = 0;
        double before = 0;
        for (int i = 0; i < front.length; i++) {
            double hereFront = frontLeft * front[i];
            double here = hereFront + rearLeft * rear[i];
            if (here >= force && here > before) {
                double way = (force - before) / (here - before);
                return (beforeFront + way * (hereFront - beforeFront)) / force;
            }
            beforeFront = hereFront;
            before = here;
        }
        return before > 0 ? beforeFront / before : 0.5;
    }
}
