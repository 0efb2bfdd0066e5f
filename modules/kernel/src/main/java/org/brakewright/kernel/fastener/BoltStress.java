package org.brakewright.kernel.fastener;

/**
 * Stress in a bolt whose thread lies in the plane of shear.
 *
 * <p>Source: Shigley's Mechanical Engineering Design, 9th ed., sections 8-9 and 8-11; put together by the energy of
 * distortion, section 5-5.
 *
 * @param tension in the bolt with preload and prying, N
 * @param shear across the bolt that friction does not take, N
 */
public record BoltStress(ScrewThread thread, double tension, double shear) {
    public BoltStress {
        Require.that(Double.isFinite(tension), "tension", tension, "must be finite");
        Require.that(Double.isFinite(shear), "shear", shear, "must be finite");
    }

    /** Pa. */
    public double tensile() {
        return Math.max(0, tension) / thread.stressArea();
    }

    /** Pa. */
    public double shearing() {
        return Math.abs(shear) / thread.stressArea();
    }

    /** The stress to hold against what the grade proves, Pa. */
    public double equivalent() {
        return Math.hypot(tensile(), Math.sqrt(3) * shearing());
    }
}
