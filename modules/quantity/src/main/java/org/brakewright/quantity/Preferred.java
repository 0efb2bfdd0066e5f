package org.brakewright.quantity;

import java.util.EnumSet;
import java.util.Set;

/** The unit that a shop shows first for each dimension, by the system it works in. */
public enum Preferred {
    US,
    METRIC;

    private static final Set<Unit> US_UNITS = EnumSet.of(
            Unit.INCH,
            Unit.SQUARE_INCH,
            Unit.CUBIC_INCH,
            Unit.POUND,
            Unit.POUND_FORCE,
            Unit.PSI,
            Unit.POUND_FORCE_FOOT,
            Unit.MILE_PER_HOUR,
            Unit.FAHRENHEIT,
            Unit.FAHRENHEIT_DIFFERENCE,
            Unit.POUND_FORCE_PER_INCH,
            Unit.INCH_PER_THOUSAND_PSI,
            Unit.CUBIC_INCH_PER_THOUSAND_PSI,
            Unit.CC_PER_FOOT,
            Unit.FOOT_POUND_FORCE,
            Unit.HORSEPOWER,
            Unit.POUND_PER_CUBIC_INCH,
            Unit.BTU_PER_POUND_FAHRENHEIT,
            Unit.BTU_PER_HOUR_FOOT_FAHRENHEIT,
            Unit.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT,
            Unit.POUND_SQUARE_FOOT);

    /** The unit shown first; for a ratio the percent, and the likeliest unit where both systems share it. */
    public Unit unit(Dimension dimension) {
        return Unit.of(dimension).stream()
                .filter(unit -> fits(unit, dimension))
                .findFirst()
                .orElseThrow();
    }

    private boolean fits(Unit unit, Dimension dimension) {
        boolean divided = Unit.of(dimension).stream().anyMatch(US_UNITS::contains);
        return !divided || US_UNITS.contains(unit) == (this == US);
    }
}
