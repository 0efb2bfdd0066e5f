package org.brakewright.quantity;

import java.util.List;
import java.util.stream.Collectors;

/** Pieces of the sentences that a refusal is made of. */
final class Wording {
    private Wording() {}

    /** Says what is due with the likely units: ", for example mm or in"; empty for a plain number. */
    static String examples(Dimension dimension) {
        List<Unit> likely = dimension.likelyUnits();
        if (likely.isEmpty()) {
            return "";
        }
        return ", for example " + likely.stream().limit(2).map(Unit::symbol).collect(Collectors.joining(" or "));
    }

    /** The texts with each likely unit behind them. */
    static List<String> withLikelyUnits(String text, Dimension dimension) {
        return dimension.likelyUnits().stream()
                .map(unit -> text + " " + unit.symbol())
                .toList();
    }
}
