package org.brakewright.kernel.ode;

/**
 * A stretch of time.
 *
 * @param from s
 * @param to s, after it
 * @param looks how often, evenly spread, the last at its end, a watcher sees the state; 0 when nobody looks
 */
public record Span(double from, double to, int looks) {
    public Span {
        if (!(to > from) || Double.isInfinite(to - from)) {
            throw new IllegalArgumentException("to must lie after from " + from + ", but is " + to);
        }
        if (looks < 0) {
            throw new IllegalArgumentException("looks must not be below zero, but is " + looks);
        }
    }

    double look(int number) {
        return number == looks ? to : from + (to - from) * number / looks;
    }
}
