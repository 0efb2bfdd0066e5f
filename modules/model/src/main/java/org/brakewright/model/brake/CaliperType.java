package org.brakewright.model.brake;

/** How a caliper reaches the far side of the disc. */
public enum CaliperType {
    /** Pistons on both sides. */
    FIXED,
    /** Pistons on one side, the body slides. */
    SLIDING
}
