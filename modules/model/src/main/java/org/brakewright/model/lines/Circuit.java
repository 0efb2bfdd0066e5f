package org.brakewright.model.lines;

/** What a master feeds. */
public enum Circuit {
    FRONT,
    REAR,
    CLUTCH
}
