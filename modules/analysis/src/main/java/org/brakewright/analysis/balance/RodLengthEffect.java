package org.brakewright.analysis.balance;

/**
 * What a longer front rod does at the hard stop, against what the adjuster does: both solved on the whole car at the same
 * brake force.
 *
 * @param longerM how much longer the front rod is
 * @param tiltChangeRad change of the bar's tilt, plus toward front rod ahead
 * @param shareChange change of the front share of the brake force
 * @param shareChangeByTurn the same for one turn of the adjuster toward the front
 */
public record RodLengthEffect(double longerM, double tiltChangeRad, double shareChange, double shareChangeByTurn) {}
