package org.brakewright.analysis.balance;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.roots.Crossing;

/**
 * The chain sampled over the pedal force, so that the first of several crossings is found, and then found exactly.
 * Valves and thresholds bend the chain, so curves may cross more than once.
 */
public final class Sweep {
    private static final int STEPS = 160;

    private final Chain chain;
    private final ChainState[] states;

    private Sweep(Chain chain, ChainState[] states) {
        this.chain = chain;
        this.states = states;
    }

    /**
     * Samples a chain up to a total brake force in N, or up to the most a pedal takes.
     *
     * @param totalForce brake force to reach, N
     */
    public static Sweep upTo(Chain chain, double totalForce) {
        double most = chain.pedalForce(totalForce).orElse(Chain.MOST_PEDAL_FORCE);
        ChainState[] states = new ChainState[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            states[i] = chain.at(most * i / STEPS);
        }
        return new Sweep(chain, states);
    }

    /** The first state at which a measure of the chain rises through zero from a negative value. */
    public Optional<ChainState> firstRise(ToDoubleFunction<ChainState> measure) {
        return firstRise(measure, 0);
    }

    /** The same, looking only beyond a pedal force in N. */
    public Optional<ChainState> firstRise(ToDoubleFunction<ChainState> measure, double beyond) {
        double before = Double.NaN;
        for (int i = 0; i <= STEPS; i++) {
            if (states[i].pedalForce() < beyond) {
                continue;
            }
            double now = measure.applyAsDouble(states[i]);
            if (before < 0 && now >= 0) {
                return Optional.of(refine(measure, states[i - 1], states[i]));
            }
            before = now;
        }
        return Optional.empty();
    }

    /** Whether a measure holds at the sampled states. */
    public ChainState[] states() {
        return states.clone();
    }

    private ChainState refine(ToDoubleFunction<ChainState> measure, ChainState low, ChainState high) {
        OptionalDouble force =
                Crossing.between(pedal -> measure.applyAsDouble(chain.at(pedal)), low.pedalForce(), high.pedalForce());
        return chain.at(force.orElse(high.pedalForce()));
    }
}
