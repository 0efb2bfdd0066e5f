package org.brakewright.analysis.parking;

/**
 * The parking brake with the driver's force, held against one way of rolling.
 *
 * @param brakeFactor friction force over the force on one shoe or pad
 * @param torqueNM of each wheel
 * @param brakeForceN of both wheels at the road
 */
public record ParkedWay(double brakeFactor, double torqueNM, double brakeForceN) {}
