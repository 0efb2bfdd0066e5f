package org.brakewright.model.brake;

/** How the two shoes of a drum brake stand to each other. */
public enum ShoeArrangement {
    /** One shoe leads, one trails, both on fixed abutments. */
    LEADING_TRAILING,
    /** Both lead when driving forward. */
    TWO_LEADING,
    /** The first shoe pushes the second round (duo-servo). */
    SELF_ENERGISING
}
