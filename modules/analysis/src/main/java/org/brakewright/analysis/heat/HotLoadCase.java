package org.brakewright.analysis.heat;

import org.brakewright.analysis.balance.Lock;
import org.jspecify.annotations.Nullable;

/**
 * Who locks first in one load case, hot.
 *
 * @param name of the load case
 * @param criticalDecelerationG from which the rear locks first, g; 0 when always; null when never
 * @param gripLock which axle locks first at the car's grip; null when no push locks a wheel
 */
public record HotLoadCase(
        String name,
        @Nullable Double criticalDecelerationG,
        @Nullable Lock gripLock) {}
