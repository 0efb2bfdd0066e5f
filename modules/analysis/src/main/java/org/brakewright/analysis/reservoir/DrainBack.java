package org.brakewright.analysis.reservoir;

import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;

/**
 * One axle's line with the foot off the pedal.
 *
 * @param axle that the line feeds
 * @param headPa pressure that drives fluid from the highest bleeder back to the reservoir; 0 when that stands higher, null
 *     when nobody measured
 * @param residualPressurePa that a residual valve keeps; 0 without one
 * @param holds whether that balances the head; null when nobody measured
 * @param thresholdPa pressure below which the brakes give no torque
 * @param dragForceN of both wheels at the ground under the pressure that is kept
 */
public record DrainBack(
        AxleEnd axle,
        @Nullable Double headPa,
        double residualPressurePa,
        @Nullable Boolean holds,
        double thresholdPa,
        double dragForceN) {}
