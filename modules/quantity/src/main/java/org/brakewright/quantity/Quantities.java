package org.brakewright.quantity;

import java.util.Optional;

/** The last look at a value before it counts as read. */
final class Quantities {
    private Quantities() {}

    static Quantity checked(double si, double tolerance, Dimension dimension, Optional<Unit> unit, String written) {
        if (!Double.isFinite(si) || !Double.isFinite(tolerance)) {
            throw new Refusal("\"" + written + "\" is too large a number.");
        }
        if (dimension == Dimension.TEMPERATURE && si < 0) {
            throw new Refusal("\"" + written + "\" is below absolute zero.");
        }
        return new Quantity(si, tolerance, dimension, unit, written);
    }
}
