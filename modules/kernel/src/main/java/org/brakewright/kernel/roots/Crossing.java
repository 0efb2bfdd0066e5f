package org.brakewright.kernel.roots;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where a function of one variable crosses zero. */
public final class Crossing {
    private static final double RELATIVE = 1e-13;
    private static final double ABSOLUTE = 1e-12;
    private static final int MOST_EVALUATIONS = 200;

    private Crossing() {}

    /**
     * The crossing between two points at which the function has opposite signs or is zero.
     *
     * @param function continuous
     * @param low lower end
     * @param high upper end
     * @return the argument to 1e-13 relative, or empty when the ends have the same sign
     */
    public static OptionalDouble between(DoubleUnaryOperator function, double low, double high) {
        double atLow = function.applyAsDouble(low);
        double atHigh = function.applyAsDouble(high);
        if (atLow == 0) {
            return OptionalDouble.of(low);
        }
        if (atHigh == 0) {
            return OptionalDouble.of(high);
        }
        if (atLow > 0 == atHigh > 0 || Double.isNaN(atLow) || Double.isNaN(atHigh)) {
            return OptionalDouble.empty();
        }
        BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(RELATIVE, ABSOLUTE, 0, 5);
        return OptionalDouble.of(
                solver.solve(MOST_EVALUATIONS, function::applyAsDouble, low, high, AllowedSolution.ANY_SIDE));
    }
}
