package org.brakewright.analysis.resolve;

import static org.brakewright.analysis.resolve.Default.estimate;
import static org.brakewright.analysis.resolve.Default.practice;

/** What is assumed of a mount. */
final class MountDefaults {
    static final Default PAD_OFFSET = estimate(0, -0.04, 0.04, "pads are bent toward the driver as the footwell asks");

    static final Default LEAN = estimate(0, -0.35, 0.35, "a hung arm stands about plumb at rest");

    static final Default FUNCTION =
            practice(500, 400, 600, "most that type tests let a driver push, and the force of makers' checks in use");

    static final Default STIFFNESS =
            practice(1250, 885, 1250, "state assessment 885 N, pedal boxes 1.25 kN, without lasting set");

    static final Default STRENGTH =
            practice(2250, 2000, 2250, "competition rules and pedal boxes: 2.0 to 2.25 kN without failure");

    static final Default SIDEWAYS = estimate(0.1, 0, 0.2, "a foot that comes from the side");

    static final Default STOPS = estimate(250_000, 100_000, 2_000_000, "ten years on the road; makers prove 2 million");

    static final Default STOP_FORCE = estimate(150, 80, 300, "an everyday stop without a booster");

    static final Default SURVIVAL = practice(0.977, 0.9, 0.999, "the chance that published endurance curves stand for");

    private static final double CLEARANCE = 0.5e-3;

    private static final double NUT_HEIGHT = 0.8;

    private MountDefaults() {}

    static Default hole(double diameter) {
        return practice(
                diameter + CLEARANCE,
                diameter,
                diameter + 2 * CLEARANCE,
                "a clearance hole half a millimetre over its bolt");
    }

    static Default engagement(double diameter) {
        return practice(NUT_HEIGHT * diameter, 0.5 * diameter, diameter, "a full nut is 0.8 diameters high");
    }
}
