package org.brakewright.analysis.hydraulics;

/**
 * Pressures at both wheel ends.
 *
 * @param front Pa
 * @param rear Pa, behind the proportioning valve
 * @param rearBeforeValve Pa, in front of it
 */
public record LinePressures(double front, double rear, double rearBeforeValve) {}
