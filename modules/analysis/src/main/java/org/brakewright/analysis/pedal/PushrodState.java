package org.brakewright.analysis.pedal;

/**
 * How the pushrods are cut and set; with a balance bar both are alike.
 *
 * @param count of rods
 * @param pinToEndM from the clevis pin to the far end in the piston
 * @param cutM length of the threaded rod alone
 * @param threadM thread that is cut on it
 * @param engagementM how far it is screwed into the clevis as set
 * @param rangeM what it can be made longer and shorter by
 * @param mostEngagement that the clevis allows, in thread diameters
 * @param turnM what one turn changes its length by
 */
public record PushrodState(
        int count,
        double pinToEndM,
        double cutM,
        double threadM,
        double engagementM,
        double rangeM,
        double mostEngagement,
        double turnM) {}
