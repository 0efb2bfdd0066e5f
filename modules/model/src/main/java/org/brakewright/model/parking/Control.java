package org.brakewright.model.parking;

/** What the driver works the parking brake with. */
public enum Control {
    HAND,
    FOOT
}
