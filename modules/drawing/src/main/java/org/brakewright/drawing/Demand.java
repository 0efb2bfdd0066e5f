package org.brakewright.drawing;

import java.util.Locale;

/** What a record asks of its components at birth; a miss is the programmer's fault. */
final class Demand {
    private Demand() {}

    static void finite(String field, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(message(field, value, "finite"));
        }
    }

    static void positive(String field, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(message(field, value, "finite and more than 0"));
        }
    }

    static void filled(String field, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(field + " must not be blank");
        }
    }

    private static String message(String field, double value, String wanted) {
        return String.format(Locale.ROOT, "%s must be %s, is %s", field, wanted, value);
    }
}
