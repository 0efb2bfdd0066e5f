package org.brakewright.analysis.working;

import java.util.List;
import org.brakewright.quantity.Dimension;

/**
 * One law applied.
 *
 * @param law key of the law
 * @param place what it is applied to: front, rear, or empty
 * @param operands numbers put in, in the order of the formula
 * @param result what came out, SI
 * @param dimension of the result
 */
public record Step(String law, String place, List<Operand> operands, double result, Dimension dimension) {

    /**
     * A number put into a law.
     *
     * @param symbol as in the formula
     * @param value SI
     * @param dimension kind of quantity
     */
    public record Operand(String symbol, double value, Dimension dimension) {}

    /** A step of the law at a place, with its operands in the order of the formula. */
    static Step step(String law, String place, double result, Dimension dimension, Operand... operands) {
        return new Step(law, place, List.of(operands), result, dimension);
    }

    /** A named value of a step. */
    static Operand operand(String symbol, double value, Dimension dimension) {
        return new Operand(symbol, value, dimension);
    }
}
