package org.brakewright.analysis.vehicle;

/**
 * The stop from one speed, as a braking test would measure it: no wheel locked, no more than the test's force.
 *
 * @param speedMS speed, m/s
 * @param decelerationG what the car holds in its worst load case, g
 * @param loadCase that load case
 * @param byLock whether a wheel about to lock sets it; otherwise the force does
 * @param distanceM from the first movement of the pedal, with the regulations' allowance for the pressure to build up
 */
public record StopFrom(double speedMS, double decelerationG, String loadCase, boolean byLock, double distanceM) {}
