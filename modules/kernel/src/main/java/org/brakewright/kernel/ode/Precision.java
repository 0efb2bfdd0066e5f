package org.brakewright.kernel.ode;

/**
 * Error allowed in each step and place: absolute plus relative times the value.
 *
 * @param absolute in the unit of the place
 * @param relative a share
 */
public record Precision(double absolute, double relative) {
    public Precision {
        if (!(absolute > 0) || !(relative >= 0)) {
            throw new IllegalArgumentException("errors allowed must be above zero: " + absolute + ", " + relative);
        }
    }
}
