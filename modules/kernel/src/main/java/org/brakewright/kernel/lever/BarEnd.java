package org.brakewright.kernel.lever;

/** The end of a balance bar that pushes one axle's master. */
public enum BarEnd {
    FRONT,
    REAR
}
