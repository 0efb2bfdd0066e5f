package org.brakewright.analysis.stop;

import org.jspecify.annotations.Nullable;

/**
 * One moment of a stop.
 *
 * @param timeS from the first movement of the pedal, s
 * @param distanceM m
 * @param speedMS m/s
 * @param decelerationG g
 * @param frontSlip 0 rolls freely, 1 is locked
 * @param rearSlip the same at the rear
 * @param frontRotorK mean temperature of one front disc or drum, K; null when the brakes' heat is not known
 * @param rearRotorK the same at the rear, K
 */
public record StopSample(
        double timeS,
        double distanceM,
        double speedMS,
        double decelerationG,
        double frontSlip,
        double rearSlip,
        @Nullable Double frontRotorK,
        @Nullable Double rearRotorK) {

    /** The same moment with temperatures in K. */
    StopSample with(double frontRotor, double rearRotor) {
        return new StopSample(timeS, distanceM, speedMS, decelerationG, frontSlip, rearSlip, frontRotor, rearRotor);
    }
}
