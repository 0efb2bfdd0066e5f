package org.brakewright.analysis.setting;

import org.brakewright.analysis.balance.CaseName;
import org.jspecify.annotations.Nullable;

/**
 * What a setting leaves on both sides.
 *
 * @param margin the lesser of both; below zero when a case is not satisfied
 * @param rearMargin by how much the rear could brake more, relative, before it locks first in some case; null when the rear does not brake
 * @param rearCase the case that gives it; null when the rear does not brake
 * @param gripMargin by how much more of the grip is used at the first lock than is asked, relative
 * @param gripCase the case that gives it
 * @param grip grip of the road in that case
 */
public record SettingMargin(
        double margin,
        @Nullable Double rearMargin,
        @Nullable CaseName rearCase,
        double gripMargin,
        CaseName gripCase,
        double grip) {

    /** Whether the rear side is the narrower one, so that the setting should go toward the front. */
    public boolean rearLimits() {
        return rearMargin != null && rearMargin <= gripMargin;
    }
}
