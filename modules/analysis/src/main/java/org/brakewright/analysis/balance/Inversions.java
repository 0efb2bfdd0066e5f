package org.brakewright.analysis.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.roots.Crossing;
import org.brakewright.kernel.roots.Crossing.Bounds;

/**
 * Finds the stretches of deceleration over which the rear uses more grip than the front.
 *
 * <p>The rear is ahead where F_r N_f - F_f N_r is positive. On each straight piece of the chain that is a parabola, known
 * from three of its points, so its roots are exact. With load-sensitive tyres they are found between two points.
 */
final class Inversions {
    /** Below this pads and shoes only come to disc and drum, and who is first means nothing, g. */
    static final double FROM_G = 0.05;

    /** No tyre goes beyond this, g. */
    private static final double TO_G = 3.0;

    private static final double NOTHING = 1e-12;

    /** Parts of a piece, up to {@link #TO_G}, in each of which load-sensitive tyres change the lead once at most. */
    private static final int PARTS = 32;

    private final ChainCurve curve;
    private final Situation situation;

    Inversions(ChainCurve curve, Situation situation) {
        this.curve = curve;
        this.situation = situation;
    }

    List<RearFirst> find() {
        List<RearFirst> stretches = new ArrayList<>();
        double start = Math.max(FROM_G, situation.decelerationG(curve.bends().getFirst()));
        double end = Math.min(TO_G, situation.decelerationG(curve.bends().getLast()));
        double[] limits = limits(start, end);
        double from = -1;
        for (int i = 0; i + 1 < limits.length; i++) {
            boolean ahead = isAhead(limits[i], limits[i + 1]);
            if (ahead && from < 0) {
                from = i == 0 ? 0 : limits[i];
            } else if (!ahead && from >= 0) {
                stretches.add(new RearFirst(from, limits[i]));
                from = -1;
            }
        }
        if (from >= 0) {
            stretches.add(new RearFirst(from, null));
        }
        return List.copyOf(stretches);
    }

    /** Decelerations between which the sign cannot change, rising, with both ends. */
    private double[] limits(double start, double end) {
        DoubleStream roots = DoubleStream.empty();
        for (int piece = 0; piece < curve.pieces(); piece++) {
            roots = DoubleStream.concat(roots, roots(piece));
        }
        DoubleStream inside = roots.filter(z -> z > start && z < end).sorted();
        return DoubleStream.concat(DoubleStream.concat(DoubleStream.of(start), inside), DoubleStream.of(end))
                .toArray();
    }

    private DoubleStream roots(int piece) {
        double[] shares = (situation.straight() ? parabola(piece) : crossings(piece))
                .sorted()
                .toArray();
        return IntStream.range(0, shares.length)
                .mapToDouble(i -> situation.decelerationG(sharpened(piece, shares[i], around(shares, i))));
    }

    /** Part of a piece that holds one of its rising roots and no other. */
    private static Bounds around(double[] roots, int i) {
        double low = i == 0 ? 0 : (roots[i - 1] + roots[i]) / 2;
        double high = i == roots.length - 1 ? 1 : (roots[i] + roots[i + 1]) / 2;
        return new Bounds(low, high, ChainCurve.WHOLE.close());
    }

    /** A root on the chain itself, when both ends of its part of the piece show on which side of it the rear is ahead. */
    private ChainState sharpened(int piece, double share, Bounds part) {
        double before = ahead(curve.exact(piece, part.low()));
        double after = ahead(curve.exact(piece, part.high()));
        if (before < 0 && after > 0) {
            return curve.zero(piece, part, share, this::ahead);
        }
        return before > 0 && after < 0
                ? curve.zero(piece, part, share, state -> -ahead(state))
                : curve.exact(piece, share);
    }

    private DoubleStream crossings(int piece) {
        double step = judged(piece) / PARTS;
        DoubleStream.Builder found = DoubleStream.builder();
        double before = ahead(curve.on(piece, 0));
        for (int part = 1; part <= PARTS; part++) {
            double after = ahead(curve.on(piece, part * step));
            if (before * after <= 0) {
                Crossing.between(share -> ahead(curve.on(piece, share)), (part - 1) * step, part * step)
                        .ifPresent(found::add);
            }
            before = after;
        }
        return found.build();
    }

    /** Share of a piece that lies within what is looked at. */
    private double judged(int piece) {
        double from = situation.decelerationG(curve.on(piece, 0));
        double to = situation.decelerationG(curve.on(piece, 1));
        return to <= TO_G ? 1 : Math.max(0, (TO_G - from) / (to - from));
    }

    private DoubleStream parabola(int piece) {
        double start = ahead(curve.on(piece, 0));
        double middle = ahead(curve.on(piece, 0.5));
        double stop = ahead(curve.on(piece, 1));
        double square = 2 * (start + stop) - 4 * middle;
        double linear = stop - start - square;
        return quadratic(square, linear, start).filter(share -> share >= 0 && share <= 1);
    }

    /** Real roots of a x2 + b x + c, in the form that does not lose digits. */
    private static DoubleStream quadratic(double a, double b, double c) {
        double size = Math.abs(a) + Math.abs(b) + Math.abs(c);
        if (Math.abs(a) <= NOTHING * size) {
            return Math.abs(b) <= NOTHING * size ? DoubleStream.empty() : DoubleStream.of(-c / b);
        }
        double inner = b * b - 4 * a * c;
        if (inner < 0) {
            return DoubleStream.empty();
        }
        double q = -0.5 * (b + Math.copySign(Math.sqrt(inner), b));
        return q == 0 ? DoubleStream.of(0) : DoubleStream.of(q / a, c / q);
    }

    private boolean isAhead(double fromG, double toG) {
        ChainState state =
                curve.find(situation::decelerationG, 0.5 * (fromG + toG)).orElseGet(curve.bends()::getLast);
        double scale = (situation.frontForce(state) + situation.rearForce(state))
                * situation.road().wholeLoad();
        return ahead(state) > NOTHING * scale;
    }

    private double ahead(ChainState state) {
        return situation.rearForce(state) * situation.frontHold(state)
                - situation.frontForce(state) * situation.rearHold(state);
    }
}
