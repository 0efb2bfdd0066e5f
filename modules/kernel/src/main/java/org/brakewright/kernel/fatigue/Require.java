package org.brakewright.kernel.fatigue;

/** Refuses values that no part can have; every refusal names the field and the value. */
final class Require {
    private Require() {}

    static void positive(String field, double value) {
        that(value > 0 && Double.isFinite(value), field, value, "must be finite and above zero");
    }

    static void that(boolean holds, String field, double value, String rule) {
        if (!holds) {
            throw new IllegalArgumentException(field + " " + rule + ", but is " + value);
        }
    }
}
