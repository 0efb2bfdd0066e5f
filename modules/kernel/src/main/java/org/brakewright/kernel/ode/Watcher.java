package org.brakewright.kernel.ode;

/** Sees states on the way. */
@FunctionalInterface
public interface Watcher {
    /** Sees nothing. */
    Watcher NOBODY = (time, state) -> {};

    /**
     * One state.
     *
     * @param time s
     * @param state a copy of its own
     */
    void see(double time, double[] state);
}
