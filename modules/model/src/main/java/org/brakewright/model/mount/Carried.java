package org.brakewright.model.mount;

/** What a bracket carries. */
public enum Carried {
    /** The pedal's pivot. */
    PIVOT,
    /** The masters, or the booster. */
    MASTERS
}
