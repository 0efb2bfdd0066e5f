package org.brakewright.analysis.balance;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of decelerations over which the rear uses more grip than the front, so that the rear locks first.
 *
 * @param fromG g
 * @param toG g; null when it does not end within the range looked at
 */
public record RearFirst(double fromG, @Nullable Double toG) {
    /** Where judging begins, as in the published rules (UN R13-H Annex 5, from memory), g. */
    public static final double JUDGED_FROM_G = 0.15;

    /** Where the first of some stretches that matters begins, g; null when none does. */
    public static @Nullable Double critical(List<RearFirst> rising) {
        RearFirst first = first(rising, JUDGED_FROM_G);
        return first == null ? null : first.fromG();
    }

    /** The first of some stretches that reaches beyond a deceleration in g; null when none does. */
    static @Nullable RearFirst first(List<RearFirst> rising, double judgedFromG) {
        for (RearFirst stretch : rising) {
            if (stretch.reachesBeyond(judgedFromG)) {
                return stretch;
            }
        }
        return null;
    }

    /** Whether it reaches beyond the gentlest braking, where who is first means nothing. */
    public boolean matters() {
        return reachesBeyond(JUDGED_FROM_G);
    }

    private boolean reachesBeyond(double decelerationG) {
        return toG == null || toG > decelerationG;
    }
}
