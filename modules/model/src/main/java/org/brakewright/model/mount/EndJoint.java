package org.brakewright.model.mount;

/** How the end of a bar is joined. */
public enum EndJoint {
    /** Passes bending on: welded, or two bolts and a gusset. */
    WELDED,
    /** Passes no bending on: one bolt, a rod end, a flattened end. */
    HINGED
}
