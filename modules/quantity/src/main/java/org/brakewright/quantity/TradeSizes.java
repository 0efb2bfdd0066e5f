package org.brakewright.quantity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Sizes and weights of the trade that look like units and are none, each with what to write instead. */
final class TradeSizes {
    private static final Set<String> GAUGES = Set.of("ga", "ga.", "gauge", "gage", "swg", "awg");
    private static final Set<String> TONS = Set.of("ton", "tons");

    private TradeSizes() {}

    static Optional<Refusal> refusal(Amount amount, String whole, Dimension expected) {
        String unit = amount.unitText().toLowerCase(Locale.ROOT);
        return switch (expected) {
            case LENGTH -> length(unit, amount, whole);
            case FORCE ->
                unit.startsWith("kg") || unit.startsWith("kilo") ? kilograms(amount, whole) : Optional.empty();
            case MASS -> TONS.contains(unit) ? tons(amount, whole) : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static Optional<Refusal> length(String unit, Amount amount, String whole) {
        if (GAUGES.contains(unit)) {
            return Optional.of(
                    new Refusal(
                            "\"" + whole
                                    + "\" is a sheet or wire gauge, and a gauge is another thickness in each material: give the thickness in mm or in."));
        }
        return "an".equals(unit) ? dash(amount, whole) : Optional.empty();
    }

    /** A dash size counts sixteenths of an inch of tube outside diameter (SAE J514 practice, from memory). */
    private static Optional<Refusal> dash(Amount amount, String whole) {
        Optional<String> diameter = QuantityWriter.fraction(Unit.INCH.toSi(Math.abs(amount.number()) / 16));
        return Optional.of(new Refusal(
                "\"" + whole + "\" is a dash size, which counts sixteenths of an inch: give the outside diameter.",
                diameter.stream().toList()));
    }

    private static Optional<Refusal> kilograms(Amount amount, String whole) {
        return Optional.of(new Refusal(
                "In \"" + whole + "\", " + amount.unitText()
                        + " is a mass; a force is due here: write kgf for the weight of a kilogram, or N or lbf.",
                List.of(amount.numberText() + " kgf")));
    }

    private static Optional<Refusal> tons(Amount amount, String whole) {
        return Optional.of(new Refusal(
                "\"" + whole + "\" can be a metric, a short or a long ton: write t, kg or lb.",
                List.of(amount.numberText() + " t", QuantityWriter.write(amount.number() * 2000) + " lb")));
    }
}
