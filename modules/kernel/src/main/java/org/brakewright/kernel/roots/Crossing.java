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
    private static final int MOST_STEPS = 100;

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

    /**
     * The zero of a function that rises, by secants from two guesses, held inside bounds that close in on it.
     *
     * @param function continuous; not above zero at {@code low}, not below zero at {@code high}
     * @param bounds in which the zero lies
     * @param first guess within the bounds
     * @param second guess within the bounds, another and better one
     * @return the argument, moved by less than {@link Bounds#close} in the last step, or the middle of what is left after
     *     100 steps
     */
    public static double rising(DoubleUnaryOperator function, Bounds bounds, double first, double second) {
        double low = bounds.low();
        double high = bounds.high();
        double same = bounds.close();
        double before = first;
        double atBefore = function.applyAsDouble(before);
        double here = second;
        for (int step = 0; step < MOST_STEPS; step++) {
            double atHere = function.applyAsDouble(here);
            low = atHere <= 0 ? Math.max(low, here) : low;
            high = atHere >= 0 ? Math.min(high, here) : high;
            if (atHere == 0 || Math.abs(here - before) <= same || high - low <= same) {
                return here;
            }
            double secant = here - atHere * (here - before) / (atHere - atBefore);
            if (Math.abs(secant - here) <= same) {
                return secant;
            }
            before = here;
            atBefore = atHere;
            here = secant > low && secant < high && step % 8 != 7 ? secant : 0.5 * (low + high);
        }
        return 0.5 * (low + high);
    }

    /**
     * Where a zero lies.
     *
     * @param low lower bound
     * @param high upper bound
     * @param close step that ends the search; secants make the error far smaller still
     */
    public record Bounds(double low, double high, double close) {}
}
