package org.brakewright.kernel.dynamics;

/** Acceleration of free fall, for turning masses into weights at the doors; the laws themselves take weights. */
public final class Gravity {
    /** m/s2, exact by definition: 3rd General Conference on Weights and Measures, 1901; ISO 80000-3. */
    public static final double STANDARD = 9.80665;

    private Gravity() {}
}
