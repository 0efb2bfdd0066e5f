package org.brakewright.model.clutch;

/** A spring at the clutch pedal, as written. */
public sealed interface PedalSpring permits ReturnSpring, OverCentre {}
