package org.brakewright.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** Writes SI values for people, so that {@link QuantityReader} reads them back. Never depends on a locale. */
public final class QuantityWriter {
    private static final int DIGITS = 4;
    private static final int TOLERANCE_DIGITS = 2;
    private static final double SIXTY_FOURTHS = 64;
    private static final double FRACTION_SLACK = 0.0005;

    private QuantityWriter() {}

    /** A plain number with four significant digits, or all digits before the point when they are more. */
    public static String write(double ratio) {
        return digits(ratio, DIGITS);
    }

    /** The value in the unit: "22.22 mm". */
    public static String write(double si, Unit unit) {
        return write(unit.fromSi(si)) + " " + unit.symbol();
    }

    /** The value and its tolerance in the unit: "480 ± 20 mm"; without tolerance when it is zero. */
    public static String write(double si, double tolerance, Unit unit) {
        if (tolerance == 0) {
            return write(si, unit);
        }
        String value = write(unit.fromSi(si));
        String slack = digits(unit.differenceFromSi(tolerance), TOLERANCE_DIGITS);
        // "5 ± 2 %" can be read in two ways, so a percent is always written twice
        String between = unit == Unit.PERCENT ? " % ± " : " ± ";
        return value + between + slack + " " + unit.symbol();
    }

    /** The length as inches and a fraction down to 1/64, when it lies within 0.0005 in of one: "1-1/8 in". */
    public static Optional<String> fraction(double metres) {
        double inches = Unit.INCH.fromSi(Math.abs(metres));
        double parts = Math.rint(inches * SIXTY_FOURTHS);
        if (!(parts < Integer.MAX_VALUE) || Math.abs(inches - parts / SIXTY_FOURTHS) > FRACTION_SLACK) {
            return Optional.empty();
        }
        String sign = metres < 0 && parts > 0 ? "-" : "";
        return Optional.of(sign + mixed((int) parts) + " in");
    }

    private static String mixed(int sixtyFourths) {
        int whole = sixtyFourths / 64;
        int rest = sixtyFourths % 64;
        if (rest == 0) {
            return Integer.toString(whole);
        }
        int common = Integer.lowestOneBit(rest);
        String fraction = rest / common + "/" + 64 / common;
        return whole == 0 ? fraction : whole + "-" + fraction;
    }

    private static String digits(double number, int significant) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("number must be finite, was " + number);
        }
        BigDecimal exact = BigDecimal.valueOf(number);
        BigDecimal rounded = exact.round(new MathContext(significant, RoundingMode.HALF_EVEN));
        int before = rounded.precision() - rounded.scale();
        BigDecimal kept = before > significant && before <= 9 ? exact.setScale(0, RoundingMode.HALF_EVEN) : rounded;
        return text(kept.stripTrailingZeros(), before);
    }

    private static String text(BigDecimal number, int before) {
        boolean plain = number.signum() == 0 || (before > -4 && before <= 9);
        return plain
                ? number.toPlainString()
                : number.toString().replace('E', 'e').replace("e+", "e");
    }
}
