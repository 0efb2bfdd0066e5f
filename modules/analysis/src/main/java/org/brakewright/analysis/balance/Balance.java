package org.brakewright.analysis.balance;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.dynamics.AxleLoads;

/**
 * Who locks first in one load case.
 *
 * <p>On each straight piece of the chain both brake forces, the deceleration and so both axle loads are proportional to
 * the pedal force: an axle reaches its grip at a root of a straight line.
 */
public final class Balance {
    private static final double SAME = 1e-4;

    private final ChainCurve curve;
    private final AxleLoads loads;

    /** The balance of a chain under given axle loads. */
    public Balance(ChainCurve curve, AxleLoads loads) {
        this.curve = curve;
        this.loads = loads;
    }

    /**
     * The axle that locks first at a grip.
     *
     * @return empty when no pedal force locks a wheel
     */
    public Optional<Lock> lock(double grip) {
        double front = firstG(state -> state.frontForce() - grip * frontLoad(state));
        double rear = firstG(state -> state.rearForce() - grip * rearLoad(state));
        double first = Math.min(front, rear);
        return first == Double.POSITIVE_INFINITY
                ? Optional.empty()
                : Optional.of(new Lock(grip, axle(front, rear), first, first / grip));
    }

    /** Deceleration in g at which a measure first rises to zero; infinite when it never does. */
    private double firstG(ToDoubleFunction<ChainState> excess) {
        double before = excess.applyAsDouble(curve.bends().getFirst());
        for (int piece = 0; piece < curve.pieces(); piece++) {
            double after = excess.applyAsDouble(curve.bends().get(piece + 1));
            if (before < 0 && after >= 0) {
                return decelerationG(curve.on(piece, before / (before - after)));
            }
            before = after;
        }
        return Double.POSITIVE_INFINITY;
    }

    /** Deceleration in g of a state. */
    double decelerationG(ChainState state) {
        return state.totalForce() / loads.weight();
    }

    /** Front load in N, straight on beyond the point where the rear leaves the ground. */
    double frontLoad(ChainState state) {
        return loads.frontStatic() + loads.heightRatio() * state.totalForce();
    }

    /** Rear load in N, below zero beyond the point where the rear leaves the ground. */
    double rearLoad(ChainState state) {
        return loads.rearStatic() - loads.heightRatio() * state.totalForce();
    }

    /** Stretches over which the rear would lock first. */
    public List<RearFirst> rearFirst() {
        return new Inversions(curve, this).find();
    }

    /** Pedal force in N at a deceleration in g; empty when no push reaches it. */
    OptionalDouble pedalForce(double decelerationG) {
        return curve.pedalForce(decelerationG * loads.weight());
    }

    private static Lock.Axle axle(double frontG, double rearG) {
        if (Math.abs(frontG - rearG) <= SAME * Math.min(frontG, rearG)) {
            return Lock.Axle.BOTH;
        }
        return frontG < rearG ? Lock.Axle.FRONT : Lock.Axle.REAR;
    }
}
