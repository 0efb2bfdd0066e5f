package org.brakewright.model;

import org.brakewright.quantity.Quantity;

/**
 * One value as the builder wrote it.
 *
 * @param quantity the value with its unit, tolerance and written form
 * @param origin where the builder has it from
 * @param path key path in the build file, for example {@code front.pistons[0]}
 */
public record Given(Quantity quantity, Origin origin, String path) {

    /** The value in SI. */
    public double si() {
        return quantity.si();
    }
}
