package org.brakewright.kernel.lever;

/** A two-pin rod that leans against the axis of the piston it pushes. Angles in rad from that axis. */
public final class Rod {
    private Rod() {}

    /** Force along the rod (N) that gives the piston a thrust (N) along its axis. */
    public static double force(double thrust, double angle) {
        return thrust / Math.cos(angle);
    }

    /** Force square to the axis (N), which the bore carries, for a thrust (N) along it. */
    public static double sideForce(double thrust, double angle) {
        return thrust * Math.tan(angle);
    }
}
