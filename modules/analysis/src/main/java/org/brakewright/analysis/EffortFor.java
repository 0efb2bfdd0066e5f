package org.brakewright.analysis;

import org.jspecify.annotations.Nullable;

/**
 * Pedal effort at one deceleration.
 *
 * @param decelerationG g
 * @param pedalForceN at the pad; null when no push gives it
 */
public record EffortFor(double decelerationG, @Nullable Double pedalForceN) {}
