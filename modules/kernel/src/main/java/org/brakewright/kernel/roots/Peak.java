package org.brakewright.kernel.roots;

import java.util.function.DoubleUnaryOperator;

/**
 * Where a function of one variable is greatest.
 *
 * <p>Looks at evenly spaced points first and then narrows by the golden section (J. Kiefer, 1953, from memory) between the
 * neighbours of the best one. Exact where the function has one rise and one fall, kinks and flat parts allowed.
 */
public final class Peak {
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private Peak() {}

    /**
     * The argument of the greatest value; of equal ones the least.
     *
     * @param function continuous
     * @param low lower end
     * @param high upper end, above the lower
     * @param points looked at before narrowing, three or more
     * @param narrow how far to narrow, relative to the whole stretch
     */
    public static double between(DoubleUnaryOperator function, double low, double high, int points, double narrow) {
        double step = (high - low) / (points - 1);
        double best = low;
        double most = function.applyAsDouble(low);
        for (int i = 1; i < points; i++) {
            double at = i == points - 1 ? high : low + i * step;
            double value = function.applyAsDouble(at);
            if (value > most) {
                most = value;
                best = at;
            }
        }
        double narrowed =
                golden(function, Math.max(low, best - step), Math.min(high, best + step), narrow * (high - low));
        return function.applyAsDouble(narrowed) > most ? narrowed : best;
    }

    private static double golden(DoubleUnaryOperator function, double low, double high, double width) {
        double from = low;
        double to = high;
        double left = to - GOLDEN * (to - from);
        double right = from + GOLDEN * (to - from);
        double atLeft = function.applyAsDouble(left);
        double atRight = function.applyAsDouble(right);
        while (to - from > width) {
            if (atLeft >= atRight) {
                to = right;
                right = left;
                atRight = atLeft;
                left = to - GOLDEN * (to - from);
                atLeft = function.applyAsDouble(left);
            } else {
                from = left;
                left = right;
                atLeft = atRight;
                right = from + GOLDEN * (to - from);
                atRight = function.applyAsDouble(right);
            }
        }
        return (from + to) / 2;
    }
}
