package org.brakewright.analysis.setting;

/**
 * The pair of stock master bores with the largest margin, the bar centred, within the most effort and the travel there is.
 *
 * @param frontBoreM m
 * @param rearBoreM m
 * @param margin over all cases
 * @param use effort and travel at the hard stop
 */
public record BorePair(double frontBoreM, double rearBoreM, SettingMargin margin, Setting.Use use) {}
