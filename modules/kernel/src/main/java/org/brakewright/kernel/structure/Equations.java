package org.brakewright.kernel.structure;

import java.util.Arrays;
import org.brakewright.kernel.structure.sparse.Graph;
import org.brakewright.kernel.structure.sparse.MinimumDegree;

/** The number that each freedom has among the unknowns, in an order that keeps the matrix sparse. */
final class Equations {
    /** Held by a support. */
    static final int HELD = -1;

    /** Nothing resists it, so it has no value. */
    static final int ASLEEP = -2;

    private final int[] numbers;
    private final int count;

    private Equations(int[] numbers, int count) {
        this.numbers = numbers;
        this.count = count;
    }

    static Equations of(StructureModel model, Assembly assembly) {
        int[] numbers = new int[assembly.freedoms()];
        double[] diagonal = assembly.diagonal();
        Arrays.setAll(numbers, freedom -> diagonal[freedom] == 0 ? ASLEEP : 0);
        for (Support support : model.supports()) {
            support.held().forEach(held -> numbers[6 * support.node() + held.index()] = HELD);
        }
        int count = 0;
        for (int node : MinimumDegree.order(Graph.ofCliques(numbers.length / 6, assembly.nodes()))) {
            for (int freedom = 6 * node; freedom < 6 * node + 6; freedom++) {
                if (numbers[freedom] == 0) {
                    numbers[freedom] = count++;
                }
            }
        }
        return new Equations(numbers, count);
    }

    int of(int freedom) {
        return numbers[freedom];
    }

    int count() {
        return count;
    }

    /** Picks the numbered freedoms. */
    double[] gather(double[] byFreedom) {
        double[] unknowns = new double[count];
        for (int freedom = 0; freedom < numbers.length; freedom++) {
            if (numbers[freedom] >= 0) {
                unknowns[numbers[freedom]] = byFreedom[freedom];
            }
        }
        return unknowns;
    }

    /** Adds the unknowns to the numbered freedoms. */
    void scatter(double[] unknowns, double[] byFreedom) {
        for (int freedom = 0; freedom < numbers.length; freedom++) {
            if (numbers[freedom] >= 0) {
                byFreedom[freedom] += unknowns[numbers[freedom]];
            }
        }
    }
}
