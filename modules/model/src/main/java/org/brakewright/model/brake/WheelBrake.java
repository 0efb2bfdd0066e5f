package org.brakewright.model.brake;

/** What stops the two wheels of one axle, as written; both wheels carry the same. */
public sealed interface WheelBrake permits DiscBrake, DrumBrake {}
