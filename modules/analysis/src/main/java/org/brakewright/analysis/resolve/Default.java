package org.brakewright.analysis.resolve;

import org.brakewright.model.Tag;

/**
 * What is assumed when the builder says nothing.
 *
 * @param value SI
 * @param low lower end of the range that is believed, SI
 * @param high upper end, SI
 * @param basis why, a clause for people
 * @param tag how well it is known
 */
public record Default(double value, double low, double high, String basis, Tag tag) {

    public Default {
        if (!(low <= value && value <= high)) {
            throw new IllegalArgumentException("low <= value <= high expected: " + low + ", " + value + ", " + high);
        }
    }

    /** An engineer's estimate. */
    static Default estimate(double value, double low, double high, String basis) {
        return new Default(value, low, high, basis, Tag.ESTIMATE);
    }

    /** What the trade does, without a source to name. */
    static Default practice(double value, double low, double high, String basis) {
        return new Default(value, low, high, basis, Tag.COMMON_PRACTICE);
    }
}
