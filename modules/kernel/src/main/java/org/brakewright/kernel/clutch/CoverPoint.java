package org.brakewright.kernel.clutch;

/**
 * A clutch cover at one point of its release.
 *
 * @param lift of the pressure plate from clamped, m
 * @param bearingTravel of the release bearing since it touched the fingers, m
 * @param bearingForce on the fingers, N
 * @param clampForce left on the facings, N
 */
public record CoverPoint(double lift, double bearingTravel, double bearingForce, double clampForce) {}
