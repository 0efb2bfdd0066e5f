package org.brakewright.quantity;

/** Probe. */
public enum Dimension {
    LENGTH
}
