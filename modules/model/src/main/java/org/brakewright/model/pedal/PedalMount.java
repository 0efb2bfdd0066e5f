package org.brakewright.model.pedal;

/** How a pedal hangs or stands. */
public enum PedalMount {
    /** Pivot above, pad below, master ahead. */
    HUNG,
    /** Pivot at the floor, pad above, master ahead. */
    FLOOR,
    /** Master behind the pedal, toward the driver. */
    REVERSE
}
