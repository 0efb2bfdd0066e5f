package org.brakewright.model.parking;

/** What the cable works on at the wheel, as written. */
public sealed interface ParkedBrake permits ServiceShoes, DrumInDisc, CaliperLever {}
