package org.brakewright.analysis.heat;

/**
 * Temperatures at one time, means in K.
 *
 * @param timeS from the start of the schedule, s
 * @param speedMS m/s
 * @param frontRotorK disc or drum
 * @param frontLiningK pads or linings
 * @param frontFluidK behind the pistons
 * @param rearRotorK disc or drum
 * @param rearLiningK pads or linings
 * @param rearFluidK behind the pistons
 */
public record HeatSample(
        double timeS,
        double speedMS,
        double frontRotorK,
        double frontLiningK,
        double frontFluidK,
        double rearRotorK,
        double rearLiningK,
        double rearFluidK) {}
