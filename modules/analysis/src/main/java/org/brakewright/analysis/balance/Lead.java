package org.brakewright.analysis.balance;

import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.roots.Crossing;

/**
 * By how much the front uses more of its grip than the rear: {@code (F_f/hold_f)/(F_r/hold_r)}.
 *
 * <p>One where both use the same; at two the rear could brake twice as much before it locks first. Over a straight piece
 * the lead has its bends where the sum of the relative changes of its four parts is zero; between them it only rises or
 * only falls, so the least lies at a bend or at an end. A curved chain is taken as it is drawn, within a thousandth.
 */
public final class Lead {
    /** Parts of a stretch in each of which the lead has one bend at most. */
    private static final int PARTS = 8;

    private final ChainCurve curve;
    private final Situation situation;

    /** The lead of a chain in a situation. */
    public Lead(ChainCurve curve, Situation situation) {
        this.curve = curve;
        this.situation = situation;
    }

    /**
     * The least lead between two decelerations in g, as far as the pedal reaches.
     *
     * @return zero when the front does nothing or the rear has no load, infinite when the rear does nothing
     */
    public double least(double fromG, double toG) {
        double least = Double.POSITIVE_INFINITY;
        for (int piece = 0; piece < curve.pieces(); piece++) {
            double startG = situation.decelerationG(curve.bends().get(piece));
            double endG = situation.decelerationG(curve.bends().get(piece + 1));
            boolean last = piece == curve.pieces() - 1;
            if (endG > startG && (endG >= fromG || last) && startG <= toG) {
                double from = Math.clamp((fromG - startG) / (endG - startG), 0, 1);
                double to = Math.clamp((toG - startG) / (endG - startG), 0, 1);
                least = Math.min(least, least(new Stretch(piece, from, Math.max(from, to))));
            }
        }
        return least;
    }

    /** Part of a piece, by shares of it. */
    private record Stretch(int piece, double from, double to) {}

    private double least(Stretch stretch) {
        double least = Math.min(lead(stretch.piece(), stretch.from()), lead(stretch.piece(), stretch.to()));
        double step = (stretch.to() - stretch.from()) / PARTS;
        Change change = new Change(stretch.piece());
        double before = change.at(stretch.from());
        for (int part = 1; part <= PARTS && step > 0; part++) {
            double low = stretch.from() + (part - 1) * step;
            double after = change.at(low + step);
            if (before < 0 && after > 0) {
                double bend = Crossing.between(change::at, low, low + step).orElse(low);
                least = Math.min(least, lead(stretch.piece(), bend));
            }
            before = after;
        }
        return least;
    }

    private double lead(int piece, double share) {
        ChainState state = curve.on(piece, share);
        double rear = situation.rearForce(state) * situation.frontHold(state);
        double front = Math.max(0, situation.frontForce(state) * situation.rearHold(state));
        return rear > 0 ? front / rear : Double.POSITIVE_INFINITY;
    }

    /** What has the sign of the change of the lead along a piece: its relative change times the four parts. */
    private final class Change {
        private final ChainState start;
        private final double[] slopes;

        Change(int piece) {
            start = curve.on(piece, 0);
            ChainState end = curve.on(piece, 1);
            slopes = new double[] {
                situation.frontForce(end) - situation.frontForce(start),
                situation.rearForce(end) - situation.rearForce(start),
                situation.frontLoad(end) - situation.frontLoad(start),
                situation.rearLoad(end) - situation.rearLoad(start)
            };
        }

        double at(double share) {
            double frontForce = situation.frontForce(start) + share * slopes[0];
            double rearForce = situation.rearForce(start) + share * slopes[1];
            double frontLoad = situation.frontLoad(start) + share * slopes[2];
            double rearLoad = situation.rearLoad(start) + share * slopes[3];
            double forces = slopes[0] * rearForce - slopes[1] * frontForce;
            double loads = slopes[3] * frontLoad - slopes[2] * rearLoad;
            return forces * frontLoad * rearLoad + (1 - situation.sensitivity()) * loads * frontForce * rearForce;
        }
    }
}
