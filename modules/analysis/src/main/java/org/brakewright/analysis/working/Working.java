package org.brakewright.analysis.working;

import java.util.List;

/**
 * One result, opened.
 *
 * @param key of the result: effort, travel, balance, margin, drum_factor, parking_hold, or that of the finding which judges it
 * @param steps in the order of computing
 */
public record Working(String key, List<Step> steps) {}
