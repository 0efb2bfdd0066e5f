package org.brakewright.kernel.thermal;

/**
 * What a brake stands in.
 *
 * @param roadSpeed m/s
 * @param wheelSpeed rad/s
 * @param ambient K
 */
public record Surroundings(double roadSpeed, double wheelSpeed, double ambient) {}
