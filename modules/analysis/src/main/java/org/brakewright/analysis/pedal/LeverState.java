package org.brakewright.analysis.pedal;

/**
 * The pedal's lever at one advance of its rod.
 *
 * @param padTravel of the pad's centre, without free play and give, m
 * @param ratio of pad travel to rod travel here; without friction also of rod force to pad force
 * @param rodAngle of the rod to the master's axis in the pedal's plane, plus anticlockwise, rad
 */
public record LeverState(double padTravel, double ratio, double rodAngle) {}
