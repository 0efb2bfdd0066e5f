package org.brakewright.analysis.stop;

import java.util.stream.DoubleStream;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;

/** A push that rises in a straight line and then stays, through a chain that follows at once. */
final class PedalRamp {
    private final ChainCurve curve;
    private final double force;
    private final double rise;
    private final ChainState held;

    /**
     * A push.
     *
     * @param curve the chain
     * @param force after the rise, N
     * @param rise s
     */
    PedalRamp(ChainCurve curve, double force, double rise) {
        this.curve = curve;
        this.force = force;
        this.rise = rise;
        this.held = curve.at(force);
    }

    ChainCurve curve() {
        return curve;
    }

    double force() {
        return force;
    }

    ChainState at(double time) {
        return time >= rise ? held : curve.at(force * time / rise);
    }

    /** Times at which the brakes' rise bends, rising, the end of the push's own rise last. */
    double[] bends() {
        DoubleStream onTheWay = curve.bends().stream()
                .mapToDouble(ChainState::pedalForce)
                .filter(bend -> bend > 0 && bend < force)
                .map(bend -> bend / force * rise);
        return DoubleStream.concat(onTheWay, DoubleStream.of(rise)).distinct().toArray();
    }
}
