package org.brakewright.analysis.balance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.roots.Crossing;

/**
 * Who locks first in one situation.
 *
 * <p>On each straight piece of the chain both brake forces, the deceleration and so both axle loads are straight over the
 * pedal force: an axle reaches its grip at a root of a straight line. With tyres that feel their load what an axle lacks
 * to its grip is bent one way only, so that it still crosses zero once at most on the way up.
 */
public final class Balance {
    private static final double SAME = 1e-4;

    /** Far beyond what the curve as drawn lies off the chain. */
    private static final double MARGIN = 1.02;

    private final ChainCurve curve;
    private final Situation situation;

    /** The balance of a chain under given axle loads and nothing else. */
    public Balance(ChainCurve curve, AxleLoads loads) {
        this(curve, Situation.plain(loads));
    }

    /** The balance of a chain in a situation. */
    public Balance(ChainCurve curve, Situation situation) {
        this.curve = curve;
        this.situation = situation;
    }

    /**
     * The axle that locks first at a grip.
     *
     * @return empty when no pedal force locks a wheel
     */
    public Optional<Lock> lock(double grip) {
        Crossed front = front(grip);
        Crossed rear = rear(grip);
        double inDoubt = MARGIN * Math.min(front.drawnG(), rear.drawnG());
        double frontG = decelerationG(front, inDoubt);
        double rearG = decelerationG(rear, inDoubt);
        double first = Math.min(frontG, rearG);
        return first == Double.POSITIVE_INFINITY
                ? Optional.empty()
                : Optional.of(new Lock(grip, axle(frontG, rearG), first, first / situation.greatestG(grip)));
    }

    /**
     * Deceleration of the first lock at a grip on the curve as drawn, which is within a thousandth and takes a fraction of
     * the time, g; infinite when no push locks a wheel.
     */
    public double firstLockAsDrawnG(double grip) {
        return Math.min(front(grip).drawnG(), rear(grip).drawnG());
    }

    /**
     * The axle that locks first at a grip, as {@link #lock} tells it, in a fraction of the time: only where the curve as
     * drawn leaves it in doubt is it found on the chain itself.
     *
     * @return empty when no pedal force locks a wheel
     */
    public Optional<Lock.Axle> first(double grip) {
        double frontG = front(grip).drawnG();
        double rearG = rear(grip).drawnG();
        if (frontG > MARGIN * rearG) {
            return Optional.of(Lock.Axle.REAR);
        }
        return rearG > MARGIN * frontG
                ? Optional.of(Lock.Axle.FRONT)
                : lock(grip).map(Lock::axle);
    }

    private Crossed front(double grip) {
        return crossed(state -> situation.frontForce(state) - grip * situation.frontHold(state));
    }

    private Crossed rear(double grip) {
        return crossed(state -> situation.rearForce(state) - grip * situation.rearHold(state));
    }

    /**
     * Where a measure first rises to zero on the curve as drawn.
     *
     * @param excess the measure
     * @param piece of the curve
     * @param share of the piece's way, 0 to 1
     * @param drawnG deceleration there, g; infinite when the measure never rises to zero
     */
    private record Crossed(ToDoubleFunction<ChainState> excess, int piece, double share, double drawnG) {}

    private Crossed crossed(ToDoubleFunction<ChainState> excess) {
        ChainState start = curve.bends().getFirst();
        double before = excess.applyAsDouble(start);
        if (before >= 0) { // the engine alone locks its wheels
            return new Crossed(excess, 0, 0, situation.decelerationG(start));
        }
        for (int piece = 0; piece < curve.pieces(); piece++) {
            double after = excess.applyAsDouble(curve.bends().get(piece + 1));
            if (after >= 0) {
                double share = share(excess, piece, before / (before - after));
                return new Crossed(excess, piece, share, situation.decelerationG(curve.on(piece, share)));
            }
            before = after;
        }
        return new Crossed(excess, 0, 0, Double.POSITIVE_INFINITY);
    }

    /** Deceleration in g, found on the chain itself when the curve as drawn puts it below one in doubt (g). */
    private double decelerationG(Crossed crossed, double inDoubt) {
        return crossed.share() == 0 || crossed.drawnG() > inDoubt
                ? crossed.drawnG()
                : situation.decelerationG(
                        curve.zero(crossed.piece(), ChainCurve.WHOLE, crossed.share(), crossed.excess()));
    }

    private double share(ToDoubleFunction<ChainState> excess, int piece, double straight) {
        return situation.straight()
                ? straight
                : Crossing.between(share -> excess.applyAsDouble(curve.on(piece, share)), 0, 1)
                        .orElseThrow();
    }

    /** Stretches over which the rear would lock first. */
    public List<RearFirst> rearFirst() {
        return new Inversions(curve, situation).find();
    }

    /** Pedal force in N at a deceleration in g; empty when no push reaches it. */
    public OptionalDouble pedalForce(double decelerationG) {
        return curve.pedalForce(situation::decelerationG, decelerationG);
    }

    private static Lock.Axle axle(double frontG, double rearG) {
        if (Math.abs(frontG - rearG) <= SAME * Math.min(frontG, rearG)) {
            return Lock.Axle.BOTH;
        }
        return frontG < rearG ? Lock.Axle.FRONT : Lock.Axle.REAR;
    }
}
