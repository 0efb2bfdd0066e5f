package org.brakewright.app.report;

import org.brakewright.analysis.tolerance.Tolerance;

/**
 * What tolerance --json prints.
 *
 * @param resultFormat 1 for this version; new keys may come without a new version, none goes or changes its meaning
 * @param name the builder's name for the car
 * @param sentence what has to be known first
 * @param tolerance what becomes of the results when every ± and every assumed range is at work at once, SI
 */
public record ToleranceResult(int resultFormat, String name, String sentence, Tolerance tolerance) {}
