package org.brakewright.kernel.lever;

/**
 * A pedal linkage at one pedal angle.
 *
 * @param pedalAngle from rest, plus drives the piston ahead, rad
 * @param padTravel of the pad's centre along its circle, m
 * @param rodTravel advance of the piston, m
 * @param ratio change of pad travel over change of rod travel here; thrust over pad force without friction
 * @param rodAngle of the pushrod to the master's axis, plus anticlockwise, rad
 * @param sideForceShare side force on the piston over thrust, not negative
 */
public record LinkagePosition(
        double pedalAngle, double padTravel, double rodTravel, double ratio, double rodAngle, double sideForceShare)
        implements LinkageOutcome {}
