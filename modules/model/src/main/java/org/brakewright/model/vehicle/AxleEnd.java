package org.brakewright.model.vehicle;

/** Front or rear. */
public enum AxleEnd {
    FRONT,
    REAR
}
