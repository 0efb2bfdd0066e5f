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
}
