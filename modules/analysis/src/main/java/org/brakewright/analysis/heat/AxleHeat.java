package org.brakewright.analysis.heat;

/**
 * The brake of one wheel through a schedule and the half hour of standing after it.
 *
 * @param rotorPeakK greatest mean temperature of disc or drum, K
 * @param facePeakK greatest temperature of its rubbed face, K
 * @param faceMeanK mean temperature of disc or drum at that time, K
 * @param liningPeakK greatest mean temperature of pads or linings, K
 * @param fluidPeakK greatest temperature of the fluid behind the pistons, K
 * @param fluidPeakS when, from the start of the schedule, s
 * @param leastForceShare least brake force at the same pressure over that of the working brake
 * @param beyondCurve whether the rotor got hotter than the friction curve knows
 * @param timeConstantS in which the rotor's excess falls to 1/e at the end, driving on, s
 */
public record AxleHeat(
        double rotorPeakK,
        double facePeakK,
        double faceMeanK,
        double liningPeakK,
        double fluidPeakK,
        double fluidPeakS,
        double leastForceShare,
        boolean beyondCurve,
        double timeConstantS) {}
