package org.brakewright.analysis.parking;

/**
 * Steepest grade that the parking brake holds.
 *
 * @param grade rise over run
 * @param gripLimited whether the tyres slide before the brake slips
 */
public record GradeHeld(double grade, boolean gripLimited) {}
