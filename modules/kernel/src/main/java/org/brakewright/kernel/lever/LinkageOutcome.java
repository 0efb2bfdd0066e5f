package org.brakewright.kernel.lever;

/** What becomes of a linkage at a pedal angle: a position, or the reason why there is none. */
public sealed interface LinkageOutcome permits LinkagePosition, LinkageOutcome.OverCentre, LinkageOutcome.OutOfReach {

    /**
     * On the way the rod came into line with the pivot: from there the pedal drives the piston back.
     *
     * @param pedalAngle at which that happens, rad from rest
     */
    record OverCentre(double pedalAngle) implements LinkageOutcome {}

    /**
     * On the way the rod stood square to the master's axis: from there it is too short to meet it. It happens to a pedal
     * that is pulled back; one that is driven ahead goes over centre first.
     *
     * @param pedalAngle at which that happens, rad from rest
     */
    record OutOfReach(double pedalAngle) implements LinkageOutcome {}
}
