package org.brakewright.analysis.chain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.kernel.roots.Crossing.Bounds;

/**
 * The chain as a broken line over the thrust behind the pedal.
 *
 * <p>Springs, thresholds, booster and valves bend it at known thrusts. Between them everything is proportional in a car
 * with one pedal ratio and plain springs, and whatever is looked for is found in closed form. Where a ratio that changes,
 * a spring's rate or a turning bar curves it, pieces are halved until the chain lies close to each, and
 * answers are then sharpened on the chain itself.
 *
 * <p>The curve ends at {@link #MOST_PEDAL_FORCE}, or where the pedal would need less force to go on: a mechanism near
 * over-centre.
 */
public final class ChainCurve {
    /** No leg and no bar goes beyond this, N. */
    public static final double MOST_PEDAL_FORCE = 20_000;

    /** How far a piece of twice the length may lie off the chain, relative. */
    private static final double CLOSE = 1e-3;

    /** A force that no one feels, N. */
    private static final double NOTHING = 1;

    /** Behind a closed valve a measure stays the same but for this, relative. */
    private static final double ROUNDING = 1e-12;

    /** A step back after which a measure that rises is less than before, relative. */
    private static final double STEP_BACK = 1e-6;

    private static final int MOST_HALVINGS = 10;

    /** A whole piece. */
    public static final Bounds WHOLE = new Bounds(0, 1, 1e-9);

    private final Chain chain;
    private final boolean straight;
    private final List<ChainState> bends = new ArrayList<>();
    private boolean ended;

    private ChainCurve(Chain chain) {
        this.chain = chain;
        this.straight = chain.straight();
    }

    /** The curve of a chain, from no force on. */
    public static ChainCurve of(Chain chain) {
        ChainCurve curve = new ChainCurve(chain);
        curve.bends.add(chain.pushed(0).state());
        double last = chain.lastThrust(MOST_PEDAL_FORCE);
        double scale = 1e-9 * last;
        for (double thrust : chain.bends()) {
            if (thrust > curve.bends.getLast().thrust() + scale && thrust < last - scale) {
                curve.draw(thrust);
            }
        }
        curve.draw(last);
        return curve;
    }

    /** States between which the curve is drawn straight, with both ends, rising. */
    public List<ChainState> bends() {
        return bends;
    }

    /** Number of straight pieces. */
    public int pieces() {
        return bends.size() - 1;
    }

    /** State on a piece, at a share 0 to 1 of its way. */
    public ChainState on(int piece, double share) {
        return bends.get(piece).toward(bends.get(piece + 1), share);
    }

    /** State at a pedal force in N, up to the end of the curve. */
    public ChainState at(double pedalForce) {
        return find(ChainState::pedalForce, pedalForce).orElseGet(bends::getLast);
    }

    /** The whole car at a pedal force in N; at the end of the curve for any larger one. */
    public Pushed pushed(double pedalForce) {
        return reach(ChainState::pedalForce, pedalForce)
                .orElseGet(() -> chain.pushed(bends.getLast().thrust()));
    }

    /**
     * Pedal force (N) at which a total brake force (N) is reached.
     *
     * @return empty when no push gives it
     */
    public OptionalDouble pedalForce(double totalForce) {
        return pedalForce(ChainState::totalForce, totalForce);
    }

    /**
     * Pedal force (N) at which a measure that never falls with the push reaches a target.
     *
     * @return empty when no push reaches it
     */
    public OptionalDouble pedalForce(ToDoubleFunction<ChainState> measure, double target) {
        Optional<ChainState> found = find(measure, target);
        return found.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(found.get().pedalForce());
    }

    /**
     * The whole car where a measure that never falls with the push reaches a target.
     *
     * @return empty when no push reaches it
     */
    public Optional<Pushed> reach(ToDoubleFunction<ChainState> measure, double target) {
        return find(measure, target).map(state -> chain.pushed(state.thrust()));
    }

    /**
     * The state at which a measure that never falls with the push reaches a target.
     *
     * @return empty when no push reaches it
     */
    public Optional<ChainState> find(ToDoubleFunction<ChainState> measure, double target) {
        double before = measure.applyAsDouble(bends.getFirst());
        if (target <= before) {
            return Optional.of(bends.getFirst());
        }
        for (int piece = 0; piece < pieces(); piece++) {
            double after = measure.applyAsDouble(bends.get(piece + 1));
            if (after >= target * (1 - ROUNDING)) {
                double share = Math.min(1, (target - before) / (after - before));
                return Optional.of(least(piece, share, measure, target));
            }
            before = after;
        }
        return Optional.empty();
    }

    /** The least push on a piece with the target: where the measure stands still, as behind a closed valve, others have it too. */
    private ChainState least(int piece, double guess, ToDoubleFunction<ChainState> measure, double target) {
        ChainState found = zero(piece, WHOLE, guess, state -> measure.applyAsDouble(state) - target);
        if (straight || found.thrust() <= bends.get(piece).thrust()) {
            return found;
        }
        ChainState before = chain.pushed(found.thrust() * (1 - STEP_BACK)).state();
        return measure.applyAsDouble(before) < target
                ? found
                : zero(piece, WHOLE, 0, state -> measure.applyAsDouble(state) - target * (1 - ROUNDING));
    }

    /** State of the chain itself on a piece, at a share 0 to 1 of its way. */
    public ChainState exact(int piece, double share) {
        return straight || share == 0 || share == 1
                ? on(piece, share)
                : chain.pushed(thrust(piece, share)).state();
    }

    /**
     * The state of the chain itself at which a measure that rises through zero on a part of a piece is zero.
     *
     * @param part shares 0 to 1 of the piece's way between which it rises through zero
     * @param guess share 0 to 1 of the piece's way at which it would be zero on a straight line
     */
    public ChainState zero(int piece, Bounds part, double guess, ToDoubleFunction<ChainState> measure) {
        if (straight) {
            return on(piece, guess);
        }
        double far = guess - part.low() < part.high() - guess ? part.high() : part.low();
        return exact(piece, Crossing.rising(share -> measure.applyAsDouble(exact(piece, share)), part, far, guess));
    }

    private double thrust(int piece, double share) {
        double low = bends.get(piece).thrust();
        return low + share * (bends.get(piece + 1).thrust() - low);
    }

    /** Draws on to a thrust (N), unless the curve has come to its end. */
    private void draw(double thrust) {
        draw(chain.pushed(thrust).state(), MOST_HALVINGS);
    }

    private void draw(ChainState to, int halvingsLeft) {
        if (ended) {
            return;
        }
        if (straight || halvingsLeft == 0) {
            append(to);
            return;
        }
        ChainState from = bends.getLast();
        ChainState middle = chain.pushed(0.5 * (from.thrust() + to.thrust())).state();
        if (isClose(from.toward(to, 0.5), middle)) {
            append(middle);
            append(to);
        } else {
            draw(middle, halvingsLeft - 1);
            draw(to, halvingsLeft - 1);
        }
    }

    private void append(ChainState to) {
        ended = to.pedalForce() < bends.getLast().pedalForce();
        if (!ended) {
            bends.add(to);
        }
    }

    private static boolean isClose(ChainState drawn, ChainState chain) {
        return isClose(drawn.pedalForce(), chain.pedalForce())
                && isClose(drawn.frontForce(), chain.frontForce())
                && isClose(drawn.rearForce(), chain.rearForce());
    }

    private static boolean isClose(double drawn, double chain) {
        return Math.abs(drawn - chain) <= CLOSE * Math.abs(chain) + NOTHING;
    }
}
