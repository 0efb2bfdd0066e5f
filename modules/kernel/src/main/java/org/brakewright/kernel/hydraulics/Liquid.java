package org.brakewright.kernel.hydraulics;

/** The liquid itself gives way: dV = V p / B. */
public final class Liquid {
    private Liquid() {}

    /**
     * Volume (m3) by which a liquid shrinks, positive, small against the volume itself.
     *
     * @param volume at rest, m3
     * @param pressure rise, Pa
     * @param bulkModulus secant modulus of the liquid without air, Pa
     */
    public static double compression(double volume, double pressure, double bulkModulus) {
        return volume * pressure / bulkModulus;
    }
}
