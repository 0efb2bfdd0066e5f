package org.brakewright.kernel.tubing;

/**
 * What one end of a tube asks for beside its route: tube that the flare rolls up, and straight that its nut and the
 * flaring clamp slide and grip on.
 *
 * @param flare length that forming the flare takes up, m
 * @param straight free of bends behind the flare, m
 */
public record EndAllowance(double flare, double straight) {
    public EndAllowance {
        Demand.notNegative("flare", flare);
        Demand.notNegative("straight", straight);
    }

    /** Length (m) to cut for a table, with both flares. */
    public static double cutLength(BendTable table, EndAllowance start, EndAllowance end) {
        return table.developedLength() + start.flare + end.flare;
    }

    /** How much (m) a straight at this end is longer than nut and clamp need; below 0 the nut stands on the bend. */
    public double spare(double straightAtEnd) {
        return straightAtEnd - straight;
    }
}
