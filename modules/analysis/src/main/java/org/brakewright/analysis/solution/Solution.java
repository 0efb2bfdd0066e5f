package org.brakewright.analysis.solution;

/**
 * How well pedal, bar, masters, valves and lines agree in the results that are told.
 *
 * @param residual largest force, pressure force or bar moment left unbalanced in any of them, over the thrust or force that it
 *     belongs to; no unit
 * @param pedalForceN where that is, N
 * @param solved number of pushes looked at
 * @param ended how the hard stop's solution ended
 */
public record Solution(double residual, double pedalForceN, int solved, Ended ended) {

    /** How the search for the hard stop ended. */
    public enum Ended {
        /** With pedal and masters inside their ends. */
        REACHED,
        /** Told beyond the pedal's stop. */
        PEDAL_STOP,
        /** Told beyond the end of the front master or chamber. */
        FRONT_MASTER,
        /** Told beyond the end of the rear master or chamber. */
        REAR_MASTER,
        /** The pedal would need less force to go on: a mechanism near over-centre. */
        OVER_CENTRE,
        /** No push of any leg gives it. */
        NOT_REACHED
    }
}
