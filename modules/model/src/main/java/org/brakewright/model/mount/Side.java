package org.brakewright.model.mount;

/** On which face of the panel a bracket sits. */
public enum Side {
    /** Toward the driver. */
    DRIVER,
    /** Toward the nose of the car. */
    ENGINE
}
