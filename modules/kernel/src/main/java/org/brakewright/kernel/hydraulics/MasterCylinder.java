package org.brakewright.kernel.hydraulics;

/**
 * One chamber that turns push into pressure: p = (F - S) eta / A, and no pressure until the spring gives way.
 *
 * <p>Source: force balance of the piston; R. Limpert, Brake Design and Safety, ch. 5 (from memory).
 *
 * @param area of the piston, m2
 * @param springForce of the return spring at working stroke, N
 * @param efficiency share of the remaining push that the seals leave, more than 0, at most 1
 */
public record MasterCylinder(double area, double springForce, double efficiency) {
    public MasterCylinder {
        Demand.positive("area", area);
        Demand.notNegative("springForce", springForce);
        Demand.efficiency("efficiency", efficiency);
    }

    /** Pressure (Pa) for a push (N) along the master's axis. */
    public double pressure(double push) {
        return Math.max(0, push - springForce) * efficiency / area;
    }

    /** Push (N) that gives a pressure (Pa, not negative); at no pressure the largest such push, the spring force. */
    public double push(double pressure) {
        return springForce + pressure * area / efficiency;
    }
}
