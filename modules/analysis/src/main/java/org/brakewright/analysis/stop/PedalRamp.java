package org.brakewright.analysis.stop;

import java.util.List;
import java.util.stream.Stream;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;

/**
 * A push that rises in a straight line and then stays, through a chain that follows at once.
 *
 * <p>On its way up the chain is taken as drawn, a broken line that lies within a thousandth of it; the push held is exact.
 */
final class PedalRamp {
    private final ChainCurve curve;
    private final double force;
    private final List<ChainState> states;
    private final double[] times;

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
        Stream<ChainState> onTheWay = curve.bends().stream().filter(bend -> bend.pedalForce() < force);
        this.states = Stream.concat(onTheWay, Stream.of(curve.at(force))).toList();
        this.times = states.stream()
                .mapToDouble(state -> state.pedalForce() / force * rise)
                .toArray();
        times[times.length - 1] = rise;
    }

    ChainCurve curve() {
        return curve;
    }

    double force() {
        return force;
    }

    ChainState at(double time) {
        int next = times.length - 1;
        if (next == 0 || time >= times[next]) {
            return states.get(next);
        }
        while (next > 1 && times[next - 1] > time) {
            next--;
        }
        double share = Math.max(0, (time - times[next - 1]) / (times[next] - times[next - 1]));
        return states.get(next - 1).toward(states.get(next), share);
    }

    /** Times at which the brakes' rise bends, rising, the end of the push's own rise last. */
    double[] bends() {
        return times.clone();
    }
}
