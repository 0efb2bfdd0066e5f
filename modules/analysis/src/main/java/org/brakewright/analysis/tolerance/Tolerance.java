package org.brakewright.analysis.tolerance;

import java.util.List;

/**
 * What becomes of the results when every ± and every assumed range is at work at once.
 *
 * @param samples cars drawn
 * @param seed they were drawn by
 * @param unusable cars drawn whose values contradict each other; they are in nothing that follows
 * @param inputs that were varied
 * @param heldStill names of values that the builder calls assumed without a range, so that they stayed as they are
 * @param spreads of effort, travel and front share at the hard stop, then of the critical deceleration of each load case
 * @param outOfTravel share of the usable cars whose pedal or masters have not the travel for the hard stop, or to which no push gives it
 * @param rearFirst one entry a load case
 */
public record Tolerance(
        int samples,
        long seed,
        int unusable,
        List<Input> inputs,
        List<String> heldStill,
        List<Spread> spreads,
        double outOfTravel,
        List<RearFirstOdds> rearFirst) {

    /** The spread of a measure of the hard stop. */
    public Spread spread(Spread.Measure measure) {
        return spreads.stream()
                .filter(spread -> spread.measure() == measure)
                .findFirst()
                .orElseThrow();
    }
}
