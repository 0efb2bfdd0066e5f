package org.brakewright.kernel.tubing;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What a bender needs of straight tube to hold on to.
 *
 * @param firstGrip before the first bend, m
 * @param between two bends, m
 * @param lastGrip after the last bend, m
 */
public record BenderTool(double firstGrip, double between, double lastGrip) {
    public BenderTool {
        Demand.notNegative("firstGrip", firstGrip);
        Demand.notNegative("between", between);
        Demand.notNegative("lastGrip", lastGrip);
    }

    /**
     * How much (m) each straight of a table is longer than the tool needs, in order, the tail last; below 0 it cannot be
     * bent. Empty for a tube without a bend.
     */
    public List<Double> spare(BendTable table) {
        List<Double> straights = table.straights();
        int last = straights.size() - 1;
        return last == 0
                ? List.of()
                : IntStream.rangeClosed(0, last)
                        .mapToObj(i -> straights.get(i) - needed(i, last))
                        .toList();
    }

    private double needed(int straight, int last) {
        if (straight == 0) {
            return firstGrip;
        }
        return straight == last ? lastGrip : between;
    }
}
