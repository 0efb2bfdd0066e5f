package org.brakewright.kernel.fastener;

/**
 * What one bolt takes of the load.
 *
 * @param shearX N
 * @param shearY N
 * @param tension N; negative where the bracket is pressed on
 */
public record BoltForce(double shearX, double shearY, double tension) {
    /** N. */
    public double shear() {
        return Math.hypot(shearX, shearY);
    }
}
