package org.brakewright.analysis.reservoir;

import org.jspecify.annotations.Nullable;

/**
 * What a circuit's reservoir holds against what may be taken from it.
 *
 * @param circuit that it feeds
 * @param usableM3 fluid that it gives; null when nobody measured
 * @param wornM3 what the pistons take from new linings fully back to worn linings fully applied; null when not known how
 *     far linings may wear
 * @param strokeM3 what the master displaces in a full stroke of this circuit
 */
public record ReservoirDemand(
        Circuit circuit,
        @Nullable Double usableM3,
        @Nullable Double wornM3,
        double strokeM3) {

    /** Which wheels hang on it. */
    public enum Circuit {
        FRONT_CIRCUIT,
        REAR_CIRCUIT,
        /** Left front and right rear wheel of a diagonal split; its fluid is the one given for the front line. */
        FIRST_DIAGONAL,
        /** Right front and left rear wheel of a diagonal split; its fluid is the one given for the rear line. */
        SECOND_DIAGONAL
    }
}
