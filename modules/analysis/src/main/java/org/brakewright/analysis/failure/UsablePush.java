package org.brakewright.analysis.failure;

import java.util.function.DoubleUnaryOperator;
import org.brakewright.kernel.roots.Crossing;

/** How much of a push arrives before pedal or masters are at their ends. */
final class UsablePush {
    private UsablePush() {}

    /**
     * The push (N), or that part of it at which the first end is met.
     *
     * @param beyondEnd how far (m) a push would go through the ends; below zero while all have travel left
     */
    static double of(double push, DoubleUnaryOperator beyondEnd) {
        return beyondEnd.applyAsDouble(push) <= 0
                ? push
                : Crossing.between(beyondEnd, 0, push).orElse(0);
    }
}
