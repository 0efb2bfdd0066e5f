package org.brakewright.analysis.feel;

import java.util.List;
import org.brakewright.analysis.pedal.TravelShare;
import org.jspecify.annotations.Nullable;

/**
 * The pedal as assumed, and with everything that gives travel at the end of its range.
 *
 * @param hardStopForceN pedal force of the hard stop as assumed, N; null when no push gives it
 * @param asAssumed the car as it stands
 * @param firm every uncertain value where it gives least travel
 * @param soft every uncertain value where it gives most travel
 * @param firmToSoft what the soft pedal's travel has more than the firm one's under the hard stop's force, by cause, largest
 *     first; adds up to the whole difference; empty without a hard stop
 */
public record Feel(
        @Nullable Double hardStopForceN,
        FeelCurve asAssumed,
        FeelCurve firm,
        FeelCurve soft,
        List<TravelShare> firmToSoft) {}
