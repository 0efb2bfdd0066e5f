package org.brakewright.kernel.ode;

/** How an integration ended. */
public sealed interface Integration {

    /**
     * At its end.
     *
     * @param evaluations of the rates
     */
    record Reached(int evaluations) implements Integration {}

    /**
     * At a threshold of its watcher before its end.
     *
     * @param time s
     * @param threshold which of them, from 0 on
     * @param evaluations of the rates
     */
    record Ended(double time, int threshold, int evaluations) implements Integration {}

    /**
     * Not at its end: no step was small enough, or the rates were no numbers.
     *
     * @param reason in the integrator's words
     */
    record Stuck(String reason) implements Integration {}
}
