package org.brakewright.kernel.clutch;

/**
 * The cushion between the facings of a clutch plate: it keeps pressing while the plate is lifted, until it has opened.
 *
 * <p>Model: force = full force (1 - lift/travel)^2, since real cushions grow stiff when pressed flat; the square is an
 * engineering estimate.
 *
 * @param fullForce when clamped, N
 * @param travel from clamped to open, m
 */
public record Cushion(double fullForce, double travel) {
    public Cushion {
        Demand.notNegative("fullForce", fullForce);
        Demand.positive("travel", travel);
    }

    /** Force (N) that is left at a lift of the pressure plate (m, not negative). */
    public double force(double lift) {
        double left = Math.max(0, 1 - lift / travel);
        return fullForce * left * left;
    }
}
