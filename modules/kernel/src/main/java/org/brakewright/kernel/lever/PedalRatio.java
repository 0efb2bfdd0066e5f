package org.brakewright.kernel.lever;

/** Ratio of a pedal whose arms stand square to foot and rod. */
public final class PedalRatio {
    private PedalRatio() {}

    /**
     * Rod force over pad force, and pad travel over rod travel.
     *
     * @param padArm pivot to the line of the foot's push, m
     * @param pushrodArm pivot to the line of the rod, m
     */
    public static double fromArms(double padArm, double pushrodArm) {
        return padArm / pushrodArm;
    }
}
