package org.brakewright.kernel.tubing;

import java.util.List;

/**
 * Which piece comes out of which length of stock.
 *
 * @param bars one for each length bought
 * @param leastStock no plan can buy less than this, m; equal to {@link #stock} where the plan is proven best
 */
public record CutPlan(List<Bar> bars, double leastStock) {
    public CutPlan {
        bars = List.copyOf(bars);
    }

    /**
     * A length of stock.
     *
     * @param stock m
     * @param pieces places in the list of pieces, rising
     * @param left over, m
     */
    public record Bar(double stock, List<Integer> pieces, double left) {
        public Bar {
            pieces = List.copyOf(pieces);
        }
    }

    /** All that is bought, m. */
    public double stock() {
        return bars.stream().mapToDouble(Bar::stock).sum();
    }
}
