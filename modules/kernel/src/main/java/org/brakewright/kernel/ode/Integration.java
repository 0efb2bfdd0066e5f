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
     * Not at its end: no step was small enough, or the rates were no numbers.
     *
     * @param reason in the integrator's words
     */
    record Stuck(String reason) implements Integration {}
}
