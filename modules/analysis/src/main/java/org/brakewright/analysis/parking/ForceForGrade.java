package org.brakewright.analysis.parking;

import org.jspecify.annotations.Nullable;

/**
 * Driver's force that holds the car on a grade.
 *
 * @param grade rise over run
 * @param noseUpN nose uphill; null when the tyres slide first
 * @param noseDownN nose downhill; null when the tyres slide first
 */
public record ForceForGrade(
        double grade, @Nullable Double noseUpN, @Nullable Double noseDownN) {

    /** The larger of both, N; infinite when the tyres slide first one way. */
    public double larger() {
        return noseUpN == null || noseDownN == null ? Double.POSITIVE_INFINITY : Math.max(noseUpN, noseDownN);
    }
}
