package org.brakewright.analysis.footwell;

import org.brakewright.analysis.footwell.FootwellState.HeelToeState;

/**
 * One foot that brakes hard with the ball and rolls its outer edge onto the throttle. The shoe covers a strip of each pad;
 * the sole joins the middles of both strips, and the ankle turns it out or in.
 *
 * <p>Ranges of the ankle: inversion 35 and eversion 15 degrees, American Academy of Orthopaedic Surgeons, Joint Motion,
 * 1965 (from memory).
 */
final class HeelToe {
    /** Of each pad that is to lie under the shoe, m; common practice, no source. */
    static final double COVER = 0.020;

    /** Share of the throttle's travel that a blip takes; common practice, no source. */
    static final double BLIP = 1.0 / 3;

    private static final double TURNS_OUT = Math.tan(Math.toRadians(15));
    private static final double TURNS_IN = Math.tan(Math.toRadians(35));

    private HeelToe() {}

    /**
     * Whether it can be done.
     *
     * @param shoe breadth, m
     * @param gap between the pads' edges, m
     * @param step how much nearer to the driver the throttle stands, m
     * @param throttleTravel whole, m
     */
    static HeelToeState of(double shoe, double gap, double step, double throttleTravel) {
        double needs = gap + 2 * COVER;
        double between = Math.min(gap, Math.max(0, shoe - 2 * COVER)) + COVER;
        double highest = between * TURNS_OUT;
        double lowest = throttleTravel * BLIP - between * TURNS_IN;
        double forward = step > highest ? step - highest : step < lowest ? step - lowest : 0;
        return new HeelToeState(needs, step, highest, lowest, Math.max(0, needs - shoe), forward);
    }
}
