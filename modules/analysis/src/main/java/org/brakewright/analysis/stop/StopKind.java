package org.brakewright.analysis.stop;

/** Which stop. */
public enum StopKind {
    /** The builder's hard stop: its effort on the car's own grip. */
    HARD,
    /** The panic push on the car's own grip. */
    PANIC,
    /** The panic push on the slippery road. */
    PANIC_SLIPPERY,
    /** The most effort that rules grant with the front circuit open. */
    FRONT_OUT,
    /** The same with the rear circuit open. */
    REAR_OUT
}
