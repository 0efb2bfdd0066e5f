package org.brakewright.quantity;

import java.text.Normalizer;

/** Typed text with the many look-alikes of phones and word processors made one. */
final class PlainText {
    private PlainText() {}

    /** The text with plain spaces, hyphens, marks and fractions; trimmed. */
    static String of(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            append(plain, text.charAt(i));
        }
        return plain.toString().strip();
    }

    private static void append(StringBuilder plain, char typed) {
        switch (typed) {
            case '\u2212', '\u2010', '\u2011', '\u2012', '\u2013', '\u2014' -> plain.append('-');
            case '\u2032', '\u2019', '\u2018' -> plain.append('\'');
            case '\u2033', '\u201c', '\u201d' -> plain.append('"');
            case '\u00b2' -> plain.append("^2");
            case '\u00b3' -> plain.append("^3");
            case '\u00b5', '\u03bc' -> plain.append('u');
            case '\u00ba' -> plain.append('°');
            case '\u2044', '\u2215' -> plain.append('/');
            case '\u2236' -> plain.append(':');
            case '\u2103' -> plain.append("°C");
            case '\u2109' -> plain.append("°F");
            default -> plain.append(spaceOrFraction(plain, typed));
        }
    }

    private static String spaceOrFraction(StringBuilder before, char typed) {
        if (Character.isSpaceChar(typed) || Character.isWhitespace(typed)) {
            return " ";
        }
        String parts = Normalizer.normalize(String.valueOf(typed), Normalizer.Form.NFKC);
        if (parts.indexOf('\u2044') < 1) {
            return String.valueOf(typed);
        }
        boolean mixed = !before.isEmpty() && Character.isDigit(before.charAt(before.length() - 1));
        return (mixed ? " " : "") + parts.replace('\u2044', '/');
    }
}
