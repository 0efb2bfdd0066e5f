package org.brakewright.analysis.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * The chain as a broken line over the pedal force: springs, thresholds, booster and valve bend it at known forces, and
 * between them everything is proportional. So whatever is looked for is found in closed form, piece by piece.
 */
public final class ChainCurve {
    /** No leg and no bar goes beyond this, N. */
    public static final double MOST_PEDAL_FORCE = 20_000;

    private final List<ChainState> bends;

    private ChainCurve(List<ChainState> bends) {
        this.bends = bends;
    }

    /** The curve of a chain, from no force to {@link #MOST_PEDAL_FORCE}. */
    public static ChainCurve of(Chain chain) {
        List<ChainState> bends = new ArrayList<>();
        bends.add(chain.at(0));
        for (double force : chain.bends()) {
            if (force > bends.getLast().pedalForce() && force < MOST_PEDAL_FORCE) {
                bends.add(chain.at(force));
            }
        }
        bends.add(chain.at(MOST_PEDAL_FORCE));
        return new ChainCurve(bends);
    }

    /** States at which the chain bends, with both ends, rising. */
    public List<ChainState> bends() {
        return bends;
    }

    /** Number of straight pieces. */
    public int pieces() {
        return bends.size() - 1;
    }

    /** State on a piece, at a share 0 to 1 of its way. */
    public ChainState on(int piece, double share) {
        ChainState from = bends.get(piece);
        ChainState to = bends.get(piece + 1);
        return new ChainState(
                mix(from.pedalForce(), to.pedalForce(), share),
                mix(from.frontPressure(), to.frontPressure(), share),
                mix(from.rearPressure(), to.rearPressure(), share),
                mix(from.frontForce(), to.frontForce(), share),
                mix(from.rearForce(), to.rearForce(), share));
    }

    /** State at a pedal force in N, up to {@link #MOST_PEDAL_FORCE}. */
    public ChainState at(double pedalForce) {
        int piece = 0;
        while (piece < pieces() - 1 && bends.get(piece + 1).pedalForce() < pedalForce) {
            piece++;
        }
        double from = bends.get(piece).pedalForce();
        return on(piece, (pedalForce - from) / (bends.get(piece + 1).pedalForce() - from));
    }

    /**
     * Pedal force (N) at which a total brake force (N) is reached.
     *
     * @return empty when even {@link #MOST_PEDAL_FORCE} does not give it
     */
    public OptionalDouble pedalForce(double totalForce) {
        return pedalForce(ChainState::totalForce, totalForce);
    }

    /**
     * Pedal force (N) at which a measure that never falls with the pedal force reaches a target.
     *
     * @return empty when even {@link #MOST_PEDAL_FORCE} does not reach it
     */
    public OptionalDouble pedalForce(ToDoubleFunction<ChainState> measure, double target) {
        double before = measure.applyAsDouble(bends.getFirst());
        if (target <= before) {
            return OptionalDouble.of(0);
        }
        for (int piece = 0; piece < pieces(); piece++) {
            double after = measure.applyAsDouble(bends.get(piece + 1));
            if (after >= target) {
                double share = (target - before) / (after - before);
                return OptionalDouble.of(
                        mix(bends.get(piece).pedalForce(), bends.get(piece + 1).pedalForce(), share));
            }
            before = after;
        }
        return OptionalDouble.empty();
    }

    private static double mix(double from, double to, double share) {
        return from + share * (to - from);
    }
}
