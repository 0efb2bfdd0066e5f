package org.brakewright.kernel.ode;

import java.util.List;

/** Sees states on the way, and says where the way ends before its time. */
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

    /** Thresholds each of which ends the way when it is passed from above zero to below. */
    default List<Threshold> ends() {
        return List.of();
    }
}
