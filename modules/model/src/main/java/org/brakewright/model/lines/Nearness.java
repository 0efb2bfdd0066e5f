package org.brakewright.model.lines;

/** What lines have to keep clear of. */
public enum Nearness {
    /** Exhaust, manifold, turbine: lines keep away or are shielded. */
    HOT,
    /** Shafts, column, links, pedals: given as all the room they sweep. */
    MOVING,
    /** A wheel with its tyre, as all the room it sweeps. */
    WHEEL,
    /** Body and frame. */
    FIXED
}
