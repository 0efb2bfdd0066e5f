package org.brakewright.analysis.balance;

import org.jspecify.annotations.Nullable;

/**
 * A stretch of decelerations over which the rear uses more grip than the front, so that the rear locks first.
 *
 * @param fromG g
 * @param toG g; null when it does not end within the range looked at
 */
public record RearFirst(double fromG, @Nullable Double toG) {}
