package org.brakewright.model.intent;

/** Where the car is driven. */
public enum Use {
    ROAD,
    ROAD_AND_TRACK,
    TRACK
}
