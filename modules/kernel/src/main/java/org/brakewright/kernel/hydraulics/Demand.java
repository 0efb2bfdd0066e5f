package org.brakewright.kernel.hydraulics;

/** What a record demands of its components; the message names the component, the value and what is allowed. */
final class Demand {
    private Demand() {}

    static void positive(String field, double value) {
        within(field, value, value > 0, "more than 0");
    }

    static void notNegative(String field, double value) {
        within(field, value, value >= 0, "0 or more");
    }

    static void between(String field, double value, double least, double most) {
        within(field, value, value >= least && value <= most, least + " to " + most);
    }

    /** A share of losses: more than 0, at most 1. */
    static void efficiency(String field, double value) {
        within(field, value, value > 0 && value <= 1, "more than 0, at most 1");
    }

    static void within(String field, double value, boolean allowed, String range) {
        if (!allowed || Double.isInfinite(value)) {
            throw new IllegalArgumentException(field + " is " + value + "; allowed is " + range);
        }
    }
}
