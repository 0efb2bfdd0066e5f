package org.brakewright.buildfile;

import java.util.Optional;
import org.brakewright.model.Asked;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.QuantityWriter;
import org.brakewright.quantity.Unit;

/** The range that a key allows, in words. */
final class Limits {
    private Limits() {}

    /** The range in a unit: "1000 mm to 6000 mm"; a plain number without a unit. */
    static String words(Asked asked, Optional<Unit> unit) {
        boolean below = Double.isFinite(asked.least());
        boolean above = Double.isFinite(asked.most());
        if (below && above) {
            return write(asked.least(), unit) + " to " + write(asked.most(), unit);
        }
        if (below) {
            return "at least " + write(asked.least(), unit);
        }
        return above ? "at most " + write(asked.most(), unit) : "any value";
    }

    /** The kind of quantity and its range: "a length, 1000 mm to 6000 mm". */
    static String due(Asked asked) {
        return asked.dimension().words() + ", " + words(asked, likely(asked.dimension()));
    }

    /** The unit a builder most likely uses; none for a plain number. */
    static Optional<Unit> likely(Dimension dimension) {
        return dimension.likelyUnits().stream().findFirst();
    }

    static boolean allow(Asked asked, double si) {
        return si >= asked.least() && si <= asked.most();
    }

    private static String write(double si, Optional<Unit> unit) {
        return unit.map(known -> QuantityWriter.write(si, known)).orElseGet(() -> QuantityWriter.write(si));
    }
}
