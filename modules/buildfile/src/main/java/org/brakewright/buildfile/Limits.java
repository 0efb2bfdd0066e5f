package org.brakewright.buildfile;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import org.brakewright.model.Asked;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.Quantity;
import org.brakewright.quantity.QuantityWriter;
import org.brakewright.quantity.Unit;

/** The range that a key allows, in words. */
final class Limits {
    private static final int DIGITS = 4;
    private static final double SLACK = 1e-12;
    private static final MathContext NOISE = new MathContext(12);

    private Limits() {}

    /**
     * The range in a unit: "1000 mm to 6000 mm"; a plain number without a unit. Limits are rounded inward, so that the
     * value shown is itself allowed.
     */
    static String words(Asked asked, Optional<Unit> unit) {
        boolean below = Double.isFinite(asked.least());
        boolean above = Double.isFinite(asked.most());
        String least = below ? write(asked.least(), unit, RoundingMode.CEILING) : "";
        String most = above ? write(asked.most(), unit, RoundingMode.FLOOR) : "";
        if (below && above) {
            return least + " to " + most;
        }
        if (below) {
            return "at least " + least;
        }
        return above ? "at most " + most : "any value";
    }

    /** The kind of quantity and its range: "a length, 1000 mm to 6000 mm". */
    static String due(Asked asked) {
        return asked.dimension().words() + ", " + words(asked, likely(asked.dimension()));
    }

    /** The unit a builder most likely uses; none for a plain number. */
    static Optional<Unit> likely(Dimension dimension) {
        return dimension.likelyUnits().stream().findFirst();
    }

    /**
     * Whether a value is allowed. A limit typed in another unit misses it by the rounding of a double (700 mm is not
     * exactly 0.7 m) and counts as the limit.
     */
    static boolean allow(Asked asked, double si) {
        return si >= asked.least() - SLACK * Math.abs(asked.least())
                && si <= asked.most() + SLACK * Math.abs(asked.most());
    }

    /** The quantity with a rounding beyond the limit taken off, so that what is read lies within it exactly. */
    static Quantity settled(Asked asked, Quantity read) {
        double si = Math.clamp(read.si(), asked.least(), asked.most());
        return si == read.si()
                ? read
                : new Quantity(si, read.tolerance(), read.dimension(), read.unit(), read.written());
    }

    private static String write(double si, Optional<Unit> unit, RoundingMode inward) {
        double number = unit.map(known -> known.fromSi(si)).orElse(si);
        double shown = BigDecimal.valueOf(number)
                .round(NOISE)
                .round(new MathContext(DIGITS, inward))
                .doubleValue();
        return unit.map(known -> QuantityWriter.write(known.toSi(shown), known))
                .orElseGet(() -> QuantityWriter.write(shown));
    }
}
