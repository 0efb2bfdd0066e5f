package org.brakewright.kernel.tubing;

/**
 * A bend in sheet: its flat length, and where the layer lies that keeps its length.
 *
 * <p>Source: Machinery's Handbook, lengths of right-angle bends (from memory).
 *
 * @param insideRadius m
 * @param thickness m
 * @param kFactor depth of the unstretched layer from the inside over the thickness, above 0 to 0.5
 */
public record SheetBend(double insideRadius, double thickness, double kFactor) {
    public SheetBend {
        Demand.notNegative("insideRadius", insideRadius);
        Demand.positive("thickness", thickness);
        Demand.holds(kFactor > 0 && kFactor <= 0.5, "kFactor must lie above 0, up to 0.5, is " + kFactor);
    }

    /** K-factor behind the handbook's L = c t + 1.57 R for a right angle. */
    public static double kFactor(double coefficient) {
        return coefficient / (Math.PI / 2);
    }

    /** Flat length (m) of the bend for an angle (rad). */
    public double allowance(double angle) {
        return angle * (insideRadius + kFactor * thickness);
    }

    /** What is taken (m) from the sum of two legs measured to the outside corner, for an angle (rad) below pi. */
    public double deduction(double angle) {
        Demand.belowHalfTurn("angle", angle);
        return 2 * (insideRadius + thickness) * Math.tan(angle / 2) - allowance(angle);
    }
}
