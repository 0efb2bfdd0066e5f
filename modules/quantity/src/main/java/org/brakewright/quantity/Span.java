package org.brakewright.quantity;

import java.util.Optional;

/** A range from one amount to another, read as its middle and half its width. */
record Span(String written, Dimension expected, String lowText, String highText) {

    Quantity quantity() {
        if (lowText.isEmpty() || highText.isEmpty()) {
            throw new Refusal("\"" + written + "\" needs a number at both ends of the range.");
        }
        Amount low = Amount.parse(lowText);
        Amount high = Amount.parse(highText);
        Optional<Unit> highUnit = UnitChoice.of(high, written, expected);
        Optional<Unit> lowUnit = low.bare() ? highUnit : UnitChoice.of(low, written, expected);
        return between(UnitChoice.si(low.number(), lowUnit), UnitChoice.si(high.number(), highUnit), lowUnit);
    }

    private Quantity between(double low, double high, Optional<Unit> unit) {
        if (low > high) {
            throw new Refusal("The range \"" + written + "\" runs downwards; write the lower end first.");
        }
        Quantities.checked(low, 0, expected, unit, written);
        return Quantities.checked(low / 2 + high / 2, high / 2 - low / 2, expected, unit, written);
    }
}
