package org.brakewright.kernel.ode;

/** How fast each place of a state changes. */
@FunctionalInterface
public interface Rates {

    /**
     * Writes the rates of a state.
     *
     * @param time s
     * @param state not to be changed
     * @param rates where they are written, as many as the state has places
     */
    void at(double time, double[] state, double[] rates);
}
