package org.brakewright.analysis.brake;

import org.jspecify.annotations.Nullable;

/**
 * What follows from the geometry of two shoes and the friction of their linings.
 *
 * @param liningFriction given or assumed
 * @param selfLockFriction least friction from which the drum locks without a push
 * @param factorForward brake factor rolling forward; null when it locks by itself
 * @param factorBackward brake factor rolling backward; null when it locks by itself
 * @param factorAtLessFriction forward factor at 10 % less friction; null when it locks by itself
 * @param factorAtMoreFriction forward factor at 10 % more friction; null when it locks by itself
 * @param sensitivity relative change of the forward factor per relative change of friction; null when it locks by itself
 * @param firstShoeShare share of the leading or primary shoe in the forward factor; null when it locks by itself
 * @param beyondReckoning whether the forward factor is more than is reckoned with, so that the car's numbers hold another one
 * @param liningPressurePa greatest lining pressure at the hard stop; null without lining width or hard stop
 */
public record ShoeResult(
        double liningFriction,
        double selfLockFriction,
        @Nullable Double factorForward,
        @Nullable Double factorBackward,
        @Nullable Double factorAtLessFriction,
        @Nullable Double factorAtMoreFriction,
        @Nullable Double sensitivity,
        @Nullable Double firstShoeShare,
        boolean beyondReckoning,
        @Nullable Double liningPressurePa) {

    /** Larger of the relative changes of the forward factor at 10 % less and 10 % more friction; infinite when it locks. */
    public double largestChange() {
        if (factorForward == null || factorAtLessFriction == null || factorAtMoreFriction == null) {
            return Double.POSITIVE_INFINITY;
        }
        return Math.max(factorAtMoreFriction / factorForward - 1, 1 - factorAtLessFriction / factorForward);
    }
}
