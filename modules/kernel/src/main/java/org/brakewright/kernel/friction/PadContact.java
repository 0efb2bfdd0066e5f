package org.brakewright.kernel.friction;

/** How the pressure is spread over a pad between its inner and its outer radius. */
public enum PadContact {
    /** Bedded: pressure times radius is even, the greatest pressure sits at the inner edge. */
    UNIFORM_WEAR,
    /** New and stiff: the pressure is even. */
    UNIFORM_PRESSURE
}
