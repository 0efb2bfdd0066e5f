package org.brakewright.quantity;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One number with the unit text behind it.
 *
 * @param number the number as written, before any unit; finite
 * @param numberText the same as text
 * @param unitText the unit as typed, empty when there is none
 * @param colon whether it was written as a ratio such as 5.2:1
 */
record Amount(double number, String numberText, String unitText, boolean colon) {
    private static final Pattern NUMBER = Pattern.compile("(?<sign>[+-]?)\\s*(?:"
            + "(?<whole>\\d+)(?:-|\\s+)(?<part>\\d+)\\s*/\\s*(?<parts>\\d+)"
            + "|(?<top>\\d+)\\s*/\\s*(?<bottom>\\d+)"
            + "|(?<decimal>(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?))");
    private static final Pattern FEET = Pattern.compile(
            "(?i)(?<feet>\\d+)\\s*(?:ft\\.?|feet|foot|')[\\s-]*(?<inches>\\d[\\d\\s./-]*(?:in|inch|inches|''|\"))");
    private static final Pattern LEFTOVER = Pattern.compile("[-\\p{N}.,:/+^~<>=±].*");
    private static final Pattern HYPHEN_BEFORE_UNIT = Pattern.compile("-(?=[\\p{L}°\"'])");
    private static final Pattern TWO_NUMBERS =
            Pattern.compile("(\\d+\\.?\\d*)\\s*-\\s*(\\d+\\.?\\d*)(\\s*[^-/\\d\\s.].*)?");

    /** Reads the text or throws {@link Refusal}. */
    static Amount parse(String text) {
        Matcher feet = FEET.matcher(text);
        if (feet.matches()) {
            return feetAndInches(Double.parseDouble(feet.group("feet")), parse(feet.group("inches")), text);
        }
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.lookingAt()) {
            throw new Refusal("\"" + text + "\" does not begin with a number.");
        }
        double number = value(matcher, text);
        String rest = text.substring(matcher.end()).strip();
        if (rest.startsWith(":")) {
            return ratio(text, number, rest.substring(1).strip());
        }
        String unit = HYPHEN_BEFORE_UNIT.matcher(rest).lookingAt() ? rest.substring(1) : rest;
        refuseLeftover(text, unit);
        return new Amount(number, matcher.group(), unit, false);
    }

    boolean bare() {
        return unitText.isEmpty() && !colon;
    }

    private static Amount feetAndInches(double feet, Amount inches, String text) {
        if (inches.number >= 12) {
            throw new Refusal("The inches in \"" + text + "\" make another foot: write less than twelve.");
        }
        double number = feet * 12 + inches.number;
        return new Amount(number, QuantityWriter.write(number), inches.unitText, false);
    }

    private static Amount ratio(String text, double top, String bottomText) {
        Matcher matcher = NUMBER.matcher(bottomText);
        if (!matcher.matches()) {
            throw new Refusal("\"" + text + "\" is not a ratio of two numbers such as 5.2:1.");
        }
        double bottom = value(matcher, text);
        return new Amount(finite(quotient(top, bottom, text), text), text, "", true);
    }

    private static double value(Matcher matcher, String text) {
        double size;
        if (matcher.group("whole") != null) {
            size = number(matcher, "whole") + properFraction(matcher, text);
        } else if (matcher.group("top") != null) {
            size = quotient(number(matcher, "top"), number(matcher, "bottom"), text);
        } else {
            size = number(matcher, "decimal");
        }
        return finite("-".equals(matcher.group("sign")) ? -size : size, text);
    }

    private static double properFraction(Matcher matcher, String text) {
        double fraction = quotient(number(matcher, "part"), number(matcher, "parts"), text);
        if (fraction >= 1) {
            throw new Refusal("The fraction behind the whole number in \"" + text + "\" is not below one.");
        }
        return fraction;
    }

    private static double number(Matcher matcher, String group) {
        return Double.parseDouble(matcher.group(group));
    }

    private static double quotient(double top, double bottom, String text) {
        if (bottom == 0) {
            throw new Refusal("\"" + text + "\" divides by zero.");
        }
        return top / bottom;
    }

    private static double finite(double number, String text) {
        if (!Double.isFinite(number)) {
            throw new Refusal("\"" + text + "\" is too large a number.");
        }
        return number;
    }

    private static void refuseLeftover(String text, String unit) {
        if (!LEFTOVER.matcher(unit).matches()) {
            return;
        }
        Matcher range = TWO_NUMBERS.matcher(text);
        if (range.matches()) {
            String tail = range.group(3) == null ? "" : range.group(3);
            String offer = range.group(1) + " to " + range.group(2) + tail;
            throw new Refusal("\"" + text + "\" is not one number; a range is written " + offer + ".", List.of(offer));
        }
        throw new Refusal("\"" + text + "\" is not one number with one unit.");
    }
}
