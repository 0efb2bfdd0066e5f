package org.brakewright.model.mount;

/** How a side of the panel is held by the body. */
public enum EdgeHold {
    /** Neither moves nor turns: welded into a folded, closed section. */
    CLAMPED,
    /** Does not move but may turn: welded or riveted to a flange or to sheet as thin as itself. */
    HINGED,
    /** Gives way evenly along the side, by edge_stiffness. */
    SPRUNG,
    /** Not held at all. */
    FREE
}
