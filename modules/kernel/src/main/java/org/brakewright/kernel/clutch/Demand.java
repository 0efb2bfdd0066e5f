package org.brakewright.kernel.clutch;

/** Refuses values that no clutch can have; every refusal names the field and the value. */
final class Demand {
    private Demand() {}

    static void positive(String field, double value) {
        within(field, value, value > 0, "more than 0");
    }

    static void notNegative(String field, double value) {
        within(field, value, value >= 0, "0 or more");
    }

    static void within(String field, double value, boolean holds, String allowed) {
        if (!holds || !Double.isFinite(value)) {
            throw new IllegalArgumentException(field + " is " + value + "; allowed is " + allowed);
        }
    }
}
