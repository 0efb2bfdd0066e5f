package org.brakewright.model.hydraulics;

/** Brake fluid grades of 49 CFR 571.116. */
public enum FluidGrade {
    DOT_3,
    DOT_4,
    /** Silicone. */
    DOT_5,
    DOT_5_1
}
