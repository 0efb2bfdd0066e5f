package org.brakewright.analysis.chain;

import org.jspecify.annotations.Nullable;

/**
 * Pressures of a frightened leg, against what the parts are rated for.
 *
 * @param pedalForceN N
 * @param frontPressurePa in the front circuit
 * @param rearPressurePa in the rear circuit, in front of any valve
 * @param frontRatingPa least rating of the parts in the front circuit; null when none is known
 * @param rearRatingPa least rating of the parts in the rear circuit; null when none is known
 */
public record PanicPush(
        double pedalForceN,
        double frontPressurePa,
        double rearPressurePa,
        @Nullable Double frontRatingPa,
        @Nullable Double rearRatingPa) {}
