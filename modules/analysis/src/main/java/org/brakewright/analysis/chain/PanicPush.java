package org.brakewright.analysis.chain;

import org.jspecify.annotations.Nullable;

/**
 * Pressures of a frightened leg and of the hard stop, against what the parts are rated for.
 *
 * @param pedalForceN N
 * @param frontPressurePa in the front circuit
 * @param rearPressurePa in the rear circuit, in front of any valve
 * @param frontWorkingPa in the front circuit at the hard stop; null when no push gives it
 * @param rearWorkingPa in the rear circuit at the hard stop, in front of any valve; null when no push gives it
 * @param frontRatingPa least rating of the parts in the front circuit; null when none is known
 * @param rearRatingPa least rating of the parts in the rear circuit; null when none is known
 */
public record PanicPush(
        double pedalForceN,
        double frontPressurePa,
        double rearPressurePa,
        @Nullable Double frontWorkingPa,
        @Nullable Double rearWorkingPa,
        @Nullable Double frontRatingPa,
        @Nullable Double rearRatingPa) {}
