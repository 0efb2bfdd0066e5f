package org.brakewright.model.resolved;

import java.util.OptionalDouble;
import org.brakewright.model.brake.ShoeArrangement;

/**
 * The two shoes of a drum in SI, for forward driving.
 *
 * @param arrangement how they stand to each other
 * @param drumRadius m
 * @param friction of the linings
 * @param first the leading shoe, or the primary one
 * @param second the other shoe; of a self-energising brake from its anchor
 * @param liningWidth m; empty when not given
 */
public record ResolvedShoes(
        ShoeArrangement arrangement,
        double drumRadius,
        double friction,
        Shoe first,
        Shoe second,
        OptionalDouble liningWidth) {

    /**
     * One shoe on its pivot.
     *
     * @param pivotDistance drum centre to pivot, m
     * @param actuationArm pivot to the line of the push, m
     * @param liningStart from the pivot, rad
     * @param liningEnd from the pivot, rad
     */
    public record Shoe(double pivotDistance, double actuationArm, double liningStart, double liningEnd) {}
}
