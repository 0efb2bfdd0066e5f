package org.brakewright.analysis.failure;

import org.jspecify.annotations.Nullable;

/**
 * Push that it takes to slow a car with something failed.
 *
 * @param decelerationG asked for, g
 * @param pedalForceN at the pad; null when not even a panic push gives it before pedal or master are at their ends
 */
public record EffortToMeet(double decelerationG, @Nullable Double pedalForceN) {}
