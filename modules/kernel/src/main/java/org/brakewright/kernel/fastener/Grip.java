package org.brakewright.kernel.fastener;

/**
 * The parts that a bolt clamps, all of one material, and the bolt that clamps them.
 *
 * <p>Source: Shigley's Mechanical Engineering Design, 9th ed., equations 8-17 and 8-22 (from memory): the cone of
 * pressure opens by 30 degrees under a washer of 1.5 diameters.
 *
 * @param length m
 * @param young of the parts, Pa
 * @param boltYoung Pa
 */
public record Grip(ScrewThread thread, double length, double young, double boltYoung) {
    private static final double TAN_30 = 0.5774;

    public Grip {
        Require.positive("length", length);
        Require.positive("young", young);
        Require.positive("boltYoung", boltYoung);
    }

    /** Of the bolt, threaded all along its grip, N/m. */
    public double boltStiffness() {
        return boltYoung * thread.stressArea() / length;
    }

    /** Of the parts, N/m. */
    public double partStiffness() {
        double d = thread.diameter();
        double cone = TAN_30 * length;
        return TAN_30 * Math.PI * young * d / (2 * Math.log(5 * (cone + 0.5 * d) / (cone + 2.5 * d)));
    }

    /** What the bolt feels of a pull on the closed joint, 0 to 1. */
    public double boltShare() {
        return boltStiffness() / (boltStiffness() + partStiffness());
    }
}
