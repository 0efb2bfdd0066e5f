package org.brakewright.model.resolved;

import java.util.Optional;

/**
 * How stops are driven on the computer.
 *
 * @param speed that they begin at, m/s
 * @param rise time in which the driver's push rises, s
 * @param slipperyGrip grip of the slippery road
 * @param peakSlip slip at which the tyres hold most
 * @param slidingShare grip of a locked wheel over the most it holds
 * @param frontWheelInertia of one wheel, kg m2
 * @param rearWheelInertia of one wheel, kg m2
 * @param pitch of the body on its springs; empty when the load moves at once
 */
public record ResolvedStops(
        double speed,
        double rise,
        double slipperyGrip,
        double peakSlip,
        double slidingShare,
        double frontWheelInertia,
        double rearWheelInertia,
        Optional<Pitch> pitch) {

    /**
     * The body on its springs.
     *
     * @param period of one swing without damping, s
     * @param damping share of the critical damping
     */
    public record Pitch(double period, double damping) {}
}
