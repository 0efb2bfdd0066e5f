package org.brakewright.analysis.lines;

import java.util.EnumSet;
import java.util.Set;
import org.brakewright.model.lines.Form;
import org.brakewright.model.lines.LineEnd;
import org.brakewright.model.lines.NutThread;
import org.brakewright.model.lines.Seat;
import org.brakewright.model.resolved.ResolvedLines.Tube;

/**
 * What must not be screwed together.
 *
 * <p>Sources: SAE J512 (inverted seats are made for double flares), SAE J533 (walls that are double-flared), ISO 4038,
 * ISO 13486; pairs of thread and tube as in {@link NutThread}; banjo and compression: common practice.
 */
final class JointRules {
    /** Pitches that differ by more are two threads, m. */
    private static final double PITCH_SLIP = 1e-6;

    /** Threads whose diameters are nearer start in each other, m. */
    private static final double STARTS = 0.6e-3;

    /** A nut slides on a tube that differs by less, m. */
    private static final double SLIDES = 0.15e-3;

    /** Beyond this the nut is an oversize one, made for a smaller tube, m. */
    private static final double OVERSIZE = 0.6e-3;

    /** Rounding of walls, m. */
    private static final double WALL_SLIP = 0.02e-3;

    private JointRules() {}

    /** Every reason against a tube's end in its port. */
    static Set<Misfit> ofTube(Tube tube, LineEnd end) {
        Set<Misfit> misfits = ofEnd(end);
        if (end.form() == Form.SINGLE_45) {
            misfits.add(Misfit.SINGLE_45);
        }
        if (end.nut() != null && bored(end.nut(), tube.outsideDiameter())) {
            misfits.add(Misfit.NUT_BORE);
        }
        if (end.form() == Form.DOUBLE_45 && tube.wall() > thickest(tube.outsideDiameter()) + WALL_SLIP) {
            misfits.add(Misfit.WALL);
        }
        return misfits;
    }

    /** Every reason against an end in its port that holds for tube and hose. */
    static Set<Misfit> ofEnd(LineEnd end) {
        Set<Misfit> misfits = EnumSet.noneOf(Misfit.class);
        seat(end.form(), end.seat(), misfits);
        if (end.form() == Form.COMPRESSION || end.seat() == Seat.FERRULE) {
            misfits.add(Misfit.COMPRESSION);
        }
        NutThread nut = end.nut();
        NutThread port = end.portThread();
        if (nut != null && port != null && nut != port) {
            boolean starts = Math.abs(nut.diameter() - port.diameter()) < STARTS
                    && Math.abs(nut.pitch() - port.pitch()) > PITCH_SLIP;
            misfits.add(starts ? Misfit.THREAD_NEAR : Misfit.THREAD);
        }
        return misfits;
    }

    private static void seat(Form form, Seat seat, Set<Misfit> misfits) {
        if (mates(form, seat) || form == Form.COMPRESSION || seat == Seat.FERRULE) {
            return;
        }
        if (form == Form.FEMALE || seat == Seat.BRACKET) {
            misfits.add(Misfit.SOCKET);
        } else if (form == Form.BANJO || seat == Seat.BANJO_FACE) {
            misfits.add(Misfit.BANJO);
        } else if (form == Form.CONVEX || seat == Seat.CONVEX) {
            misfits.add(Misfit.CONVEX_SEAT);
        } else if (form == Form.SINGLE_37 || seat == Seat.CONE_37) {
            misfits.add(Misfit.CONE_ANGLE);
        } else {
            misfits.add(Misfit.ISO_AND_SAE);
        }
    }

    private static boolean mates(Form form, Seat seat) {
        return switch (form) {
            case DOUBLE_45, SINGLE_45 -> seat == Seat.INVERTED_45 || seat == Seat.MALE_45;
            case SINGLE_37 -> seat == Seat.CONE_37;
            case CONVEX -> seat == Seat.CONVEX;
            case ISO_DOUBLE -> seat == Seat.ISO_DOUBLE;
            case BANJO -> seat == Seat.BANJO_FACE;
            case COMPRESSION -> seat == Seat.FERRULE;
            case FEMALE -> seat == Seat.BRACKET;
        };
    }

    private static boolean bored(NutThread nut, double outside) {
        double off = Math.abs(nut.tube() - outside);
        return off > SLIDES && off < OVERSIZE;
    }

    /** Thickest wall (m) that SAE J533 double-flares, by the next size up. */
    private static double thickest(double outside) {
        if (outside < 3.2e-3) {
            return 0.63e-3;
        }
        if (outside < 4.8e-3) {
            return 0.71e-3;
        }
        return outside < 6.4e-3 ? 0.83e-3 : 0.89e-3;
    }
}
