package org.brakewright.analysis.tolerance;

import org.brakewright.kernel.statistics.Distribution;
import org.brakewright.kernel.statistics.Rectangular;
import org.brakewright.kernel.statistics.Triangular;
import org.brakewright.quantity.Dimension;

/**
 * One value that is only known within limits.
 *
 * @param path key path in the build file
 * @param title plain name
 * @param dimension kind of quantity
 * @param value of the build as it stands, SI
 * @param low lower end, SI
 * @param high upper end, SI
 * @param belief what is believed between the ends
 */
public record Input(
        String path, String title, Dimension dimension, double value, double low, double high, Belief belief) {

    /** What is believed of a value between its ends. */
    public enum Belief {
        /** The builder's ±: every value between equally likely. */
        EVEN,
        /** A range of the ledger: likeliest at the value. */
        PEAKED
    }

    Distribution distribution() {
        return switch (belief) {
            case EVEN -> new Rectangular(low, high);
            case PEAKED -> new Triangular(low, value, high);
        };
    }
}
