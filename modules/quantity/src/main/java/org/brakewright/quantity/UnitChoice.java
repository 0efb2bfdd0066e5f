package org.brakewright.quantity;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Chooses the unit that an amount was written in, or says why it cannot be one. */
final class UnitChoice {
    private UnitChoice() {}

    /** The unit of the amount; empty for a plain number. Throws {@link Refusal} quoting the whole text. */
    static Optional<Unit> of(Amount amount, String whole, Dimension expected) {
        if (!amount.unitText().isEmpty()) {
            return Optional.of(named(amount, whole, expected));
        }
        if (expected == Dimension.RATIO) {
            return Optional.empty();
        }
        if (amount.colon()) {
            throw new Refusal("\"" + whole + "\" is a ratio; " + due(expected) + ".");
        }
        throw withoutUnit(whole, expected);
    }

    /** A number without a unit where one is due; offers the likely ones. */
    static Refusal withoutUnit(String whole, Dimension expected) {
        List<String> offers = Wording.withLikelyUnits(whole, expected);
        String examples = offers.stream().limit(2).collect(Collectors.joining(" or "));
        return new Refusal(
                "\"" + whole + "\" has no unit; " + expected.words() + " is due, for example " + examples + ".",
                offers);
    }

    /** The SI value of a number in a unit, or of a plain number. */
    static double si(double number, Optional<Unit> unit) {
        return unit.map(known -> known.toSi(number)).orElse(number);
    }

    /** The SI size of a difference in a unit, or of a plain number. */
    static double differenceSi(double number, Optional<Unit> unit) {
        return unit.map(known -> known.differenceToSi(number)).orElse(number);
    }

    private static Unit named(Amount amount, String whole, Dimension expected) {
        return Unit.find(amount.unitText(), expected).orElseThrow(() -> notFound(amount, whole, expected));
    }

    private static Refusal notFound(Amount amount, String whole, Dimension expected) {
        Optional<Refusal> trade = TradeSizes.refusal(amount, whole, expected);
        if (trade.isPresent()) {
            return trade.get();
        }
        List<Dimension> others = UnitNames.dimensionsOf(amount.unitText());
        return others.isEmpty() ? unknown(amount, whole, expected) : ofOther(amount, whole, expected, others);
    }

    private static Refusal ofOther(Amount amount, String whole, Dimension expected, List<Dimension> others) {
        String words = others.stream().map(Dimension::words).collect(Collectors.joining(" or "));
        return new Refusal("In \"" + whole + "\", " + amount.unitText() + " is " + words + "; " + due(expected) + ".");
    }

    private static Refusal unknown(Amount amount, String whole, Dimension expected) {
        Optional<Unit> nearest = UnitNames.nearest(amount.unitText(), expected);
        List<String> offers = Stream.concat(nearest.stream(), expected.likelyUnits().stream())
                .distinct()
                .map(unit -> amount.numberText() + " " + unit.symbol())
                .toList();
        String question =
                nearest.map(unit -> "; did you mean " + unit.symbol() + "?").orElse("; " + due(expected) + ".");
        return new Refusal(
                "In \"" + whole + "\", " + amount.unitText() + " is not a unit known here" + question, offers);
    }

    private static String due(Dimension expected) {
        return expected.words() + " is due here" + Wording.examples(expected);
    }
}
