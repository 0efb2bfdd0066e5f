package org.brakewright.kernel.thermal;

/** Refuses values that no brake or car can have; every refusal names the field and the value. */
final class Require {
    private Require() {}

    static void positive(String field, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw refusal(field, value, "must be finite and above zero");
        }
    }

    static void notNegative(String field, double value) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw refusal(field, value, "must be finite and not below zero");
        }
    }

    static void finite(String field, double value) {
        if (!Double.isFinite(value)) {
            throw refusal(field, value, "must be finite");
        }
    }

    static void fraction(String field, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw refusal(field, value, "must lie between 0 and 1");
        }
    }

    static void that(boolean holds, String field, double value, String rule) {
        if (!holds) {
            throw refusal(field, value, rule);
        }
    }

    private static IllegalArgumentException refusal(String field, double value, String rule) {
        return new IllegalArgumentException(field + " " + rule + ", but is " + value);
    }
}
