package org.brakewright.quantity;

import java.util.List;
import java.util.Optional;

/** A value with what it may be off by, each possibly with its own unit. */
record Tolerated(String written, Dimension expected, String valueText, String toleranceText) {

    Quantity quantity() {
        if (valueText.isEmpty() || toleranceText.isEmpty()) {
            throw new Refusal("\"" + written + "\" needs a number before and after the plus-minus sign.");
        }
        Amount value = Amount.parse(valueText);
        Amount tolerance = Amount.parse(toleranceText);
        if (tolerance.number() < 0 || toleranceText.startsWith("-")) {
            throw new Refusal("The tolerance in \"" + written + "\" is negative.");
        }
        return percent(tolerance) ? withPercent(value, tolerance) : withUnits(value, tolerance);
    }

    private static boolean percent(Amount amount) {
        return Unit.find(amount.unitText(), Dimension.RATIO).isPresent();
    }

    private Quantity withUnits(Amount value, Amount tolerance) {
        if (tolerance.colon()) {
            throw new Refusal("The tolerance in \"" + written + "\" cannot be a ratio of two numbers.");
        }
        Amount unitGiver = value.bare() ? tolerance : value;
        Optional<Unit> unit = UnitChoice.of(unitGiver, written, expected);
        Optional<Unit> own = tolerance.bare() ? unit : UnitChoice.of(tolerance, written, expected);
        return of(value, unit, UnitChoice.differenceSi(tolerance.number(), own));
    }

    private Quantity withPercent(Amount value, Amount tolerance) {
        double share = tolerance.number() / 100;
        if (expected == Dimension.RATIO && value.bare()) {
            return bareRatio(value, share);
        }
        if (value.bare()) {
            throw withoutUnit(value);
        }
        if (expected == Dimension.TEMPERATURE) {
            throw new Refusal("\"" + written
                    + "\" gives a share of a temperature, which depends on where its scale begins: give degrees.");
        }
        Optional<Unit> unit = UnitChoice.of(value, written, expected);
        boolean points = unit.filter(Unit.PERCENT::equals).isPresent();
        return of(value, unit, points ? share : Math.abs(UnitChoice.si(value.number(), unit)) * share);
    }

    private Refusal withoutUnit(Amount value) {
        List<String> offers = expected.likelyUnits().stream()
                .map(unit -> value.numberText() + " " + unit.symbol() + " ± " + toleranceText)
                .toList();
        return new Refusal(
                "The value in \"" + written + "\" has no unit; " + expected.words() + " is due"
                        + Wording.examples(expected) + ".",
                offers);
    }

    /**
     * "0.40 ± 10 %" is a coefficient and a share of it, "18 ± 2 %" is two percents. A value below one with a percent
     * figure above it can only be the first; a value of ten or more with a smaller figure is taken as the second;
     * between them nobody can tell.
     */
    private Quantity bareRatio(Amount value, double share) {
        double size = Math.abs(value.number());
        boolean shareOfValue = size < 1 && share * 100 >= size;
        boolean points = size >= 10 && share * 100 < size;
        if (!shareOfValue && !points) {
            throw twoWays(value, size * share);
        }
        return points ? of(value, Optional.of(Unit.PERCENT), share) : of(value, Optional.empty(), size * share);
    }

    private Refusal twoWays(Amount value, double tolerance) {
        String points = value.numberText() + " % ± " + toleranceText;
        String share = value.numberText() + " ± " + QuantityWriter.write(tolerance);
        return new Refusal(
                "\"" + written + "\" can be read in two ways; write " + points + " or " + share + ".",
                List.of(points, share));
    }

    private Quantity of(Amount value, Optional<Unit> unit, double tolerance) {
        return Quantities.checked(UnitChoice.si(value.number(), unit), tolerance, expected, unit, written);
    }
}
