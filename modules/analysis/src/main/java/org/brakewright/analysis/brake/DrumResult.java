package org.brakewright.analysis.brake;

import org.brakewright.model.brake.ShoeArrangement;
import org.jspecify.annotations.Nullable;

/**
 * One pair of drums.
 *
 * @param where which drums
 * @param shoes how they stand to each other
 * @param brakeFactor that the numbers of the car are given with, rolling forward
 * @param geometry what follows from where the shoes stand; null when the factor was given or assumed
 */
public record DrumResult(
        Where where,
        ShoeArrangement shoes,
        double brakeFactor,
        @Nullable ShoeResult geometry) {

    /** Which drums. */
    public enum Where {
        /** The service drums in front. */
        FRONT,
        /** The service drums behind. */
        REAR,
        /** Drums in the discs that only the parking brake works. */
        PARKING
    }
}
