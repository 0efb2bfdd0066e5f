package org.brakewright.analysis.stop;

/**
 * One moment of a stop.
 *
 * @param timeS from the first movement of the pedal, s
 * @param distanceM m
 * @param speedMS m/s
 * @param decelerationG g
 * @param frontSlip 0 rolls freely, 1 is locked
 * @param rearSlip the same at the rear
 */
public record StopSample(
        double timeS, double distanceM, double speedMS, double decelerationG, double frontSlip, double rearSlip) {}
