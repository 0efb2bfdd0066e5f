package org.brakewright.analysis.setting;

import org.jspecify.annotations.Nullable;

/**
 * The setting of bar or valve with the largest margin over all cases.
 *
 * @param kind what is set
 * @param present offset of the bar in m or knee of the valve in Pa, as it stands
 * @param best the same with the largest margin; a bar's in steps of a quarter turn from present
 * @param turns turns of the bar from present to best in quarters of a turn, plus toward more front; null for a valve
 * @param leftToFrontM what is left of the bar's range beyond the best toward more front; null for a valve
 * @param leftToRearM what is left toward more rear; null for a valve
 * @param atPresent margin as it stands
 * @param atBest largest margin
 * @param presentUse effort and travel as it stands; null when no push gives the hard stop
 * @param bestUse effort and travel at the best; null when no push gives the hard stop
 */
public record Setting(
        Kind kind,
        double present,
        double best,
        @Nullable Double turns,
        @Nullable Double leftToFrontM,
        @Nullable Double leftToRearM,
        SettingMargin atPresent,
        SettingMargin atBest,
        @Nullable Use presentUse,
        @Nullable Use bestUse) {

    /** What is set. */
    public enum Kind {
        BAR,
        VALVE
    }

    /**
     * What a setting asks of the leg at the hard stop.
     *
     * @param effortN pedal force
     * @param travelM pedal travel
     * @param withinTravel whether pedal and masters have that much travel
     */
    public record Use(double effortN, double travelM, boolean withinTravel) {}

    /** Whether every case is satisfied at the best setting. */
    public boolean satisfiesAll() {
        return atBest.margin() >= 0;
    }
}
