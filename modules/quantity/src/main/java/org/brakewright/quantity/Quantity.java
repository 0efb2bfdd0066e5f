package org.brakewright.quantity;

import java.util.Optional;

/**
 * A measured or chosen value, as it was written and in SI.
 *
 * @param si the value in the SI unit of its dimension
 * @param tolerance how far the true value may lie to either side, in SI; 0 when none was given
 * @param dimension what it measures
 * @param unit the unit it was written in; empty for a plain number
 * @param written the text that the builder typed, kept for the page
 */
public record Quantity(double si, double tolerance, Dimension dimension, Optional<Unit> unit, String written) {
    public Quantity {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("si must be finite, was " + si);
        }
        if (!Double.isFinite(tolerance) || tolerance < 0) {
            throw new IllegalArgumentException("tolerance must be finite and not negative, was " + tolerance);
        }
        if (unit.isPresent() && unit.get().dimension() != dimension) {
            throw new IllegalArgumentException("unit must measure " + dimension + ", was " + unit.get());
        }
        if (unit.isEmpty() && dimension != Dimension.RATIO) {
            throw new IllegalArgumentException("unit must not be empty for " + dimension);
        }
    }

    /** A value in a unit, without tolerance, written the way {@link QuantityWriter} does. */
    public static Quantity of(double number, Unit unit) {
        double si = unit.toSi(number);
        return new Quantity(si, 0, unit.dimension(), Optional.of(unit), QuantityWriter.write(si, unit));
    }

    /** A plain number without tolerance. */
    public static Quantity ratio(double number) {
        return new Quantity(number, 0, Dimension.RATIO, Optional.empty(), QuantityWriter.write(number));
    }

    /** The lowest value that the tolerance allows, in SI. */
    public double low() {
        return si - tolerance;
    }

    /** The highest value that the tolerance allows, in SI. */
    public double high() {
        return si + tolerance;
    }

    /** The value as a number in a unit of the same dimension. */
    public double in(Unit other) {
        if (other.dimension() != dimension) {
            throw new IllegalArgumentException("other must measure " + dimension + ", was " + other);
        }
        return other.fromSi(si);
    }
}
