package org.brakewright.kernel.friction;

/**
 * A cable-worked brake: lever, cable with equalizer, and a second lever at the wheel (drum strut or caliper arm).
 *
 * @param leverRatio cable pull over force on the hand or foot lever, without friction
 * @param cableEfficiency share of the pull that arrives at the wheels, above 0 and up to 1
 * @param wheelLeverRatio force on shoe tip or pad over the cable pull at that wheel
 * @param wheels how many wheels share the pull
 */
public record ParkingBrake(double leverRatio, double cableEfficiency, double wheelLeverRatio, int wheels) {
    public ParkingBrake {
        Require.positive("leverRatio", leverRatio);
        Require.positive("cableEfficiency", cableEfficiency);
        Require.fraction("cableEfficiency", cableEfficiency);
        Require.positive("wheelLeverRatio", wheelLeverRatio);
        Require.positive("wheels", wheels);
    }

    /** Cable pull that arrives at each wheel, N, from a lever force in N. */
    public double cablePull(double leverForce) {
        return leverForce * leverRatio * cableEfficiency / wheels;
    }

    /** Force on each shoe tip or on each pad of a wheel, N, from a lever force in N. */
    public double applyForce(double leverForce) {
        return cablePull(leverForce) * wheelLeverRatio;
    }

    /**
     * Torque at each wheel, N m.
     *
     * @param leverForce N
     * @param brakeFactor C* for the way the wheel would roll; twice the friction for a disc caliper
     * @param radius drum radius or effective disc radius, m
     */
    public double torque(double leverForce, double brakeFactor, double radius) {
        return brakeFactor * applyForce(leverForce) * radius;
    }

    /** Lever force, N, that gives a torque in N m at each wheel. */
    public double leverForceFor(double torque, double brakeFactor, double radius) {
        Require.positive("brakeFactor", brakeFactor);
        Require.positive("radius", radius);
        return torque / torque(1, brakeFactor, radius);
    }
}
