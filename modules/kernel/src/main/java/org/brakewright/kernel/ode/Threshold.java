package org.brakewright.kernel.ode;

/** A value whose passing through zero ends the way. */
@FunctionalInterface
public interface Threshold {

    /**
     * The value, continuous over time.
     *
     * @param time s
     * @param state not to be changed
     */
    double at(double time, double[] state);
}
