package org.brakewright.quantity;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads what a builder types: number or fraction, unit, tolerance or range. Never depends on a locale. */
public final class QuantityReader {
    private static final int LONGEST = 100;
    private static final Pattern PLUS_MINUS = Pattern.compile("±|\\+\\s?/\\s?-|\\+\\s?-");
    private static final Pattern RANGE = Pattern.compile("(?i)(?<![a-z])to(?![a-z])|\\.\\.\\.?|\u2026");

    private QuantityReader() {}

    /** The quantity that the text states in the expected dimension, or why it states none. */
    public static Reading read(String text, Dimension expected) {
        try {
            return new Reading.Read(quantity(text.strip(), PlainText.of(text), expected));
        } catch (Refusal refusal) {
            return refusal.refused();
        }
    }

    private static Quantity quantity(String written, String plain, Dimension expected) {
        refuseWhole(plain, expected);
        Matcher plusMinus = PLUS_MINUS.matcher(plain);
        if (plusMinus.find()) {
            refuseRangeBeside(plain);
            String value = plain.substring(0, plusMinus.start()).strip();
            String tolerance = plain.substring(plusMinus.end()).strip();
            return new Tolerated(written, expected, value, tolerance).quantity();
        }
        Matcher range = RANGE.matcher(plain);
        if (range.find()) {
            String low = plain.substring(0, range.start()).strip();
            String high = plain.substring(range.end()).strip();
            return new Span(written, expected, low, high).quantity();
        }
        return single(written, plain, expected);
    }

    private static void refuseRangeBeside(String plain) {
        if (RANGE.matcher(plain).find()) {
            throw new Refusal("\"" + plain + "\" has both a range and a tolerance; write one of them.");
        }
    }

    private static void refuseWhole(String plain, Dimension expected) {
        if (plain.isEmpty()) {
            throw new Refusal(
                    "Nothing is written here; " + expected.words() + " is due" + Wording.examples(expected) + ".");
        }
        if (plain.length() > LONGEST) {
            throw new Refusal("\"" + plain.substring(0, 20) + "...\" is too long: a value has at most 100 characters.");
        }
        Commas.refuse(plain);
    }

    private static Quantity single(String written, String plain, Dimension expected) {
        Amount amount = Amount.parse(plain);
        Optional<Unit> unit = UnitChoice.of(amount, plain, expected);
        return Quantities.checked(UnitChoice.si(amount.number(), unit), 0, expected, unit, written);
    }
}
