package org.brakewright.model.heat;

/** What the car is put through, as written. */
public sealed interface Schedule permits SingleStop, RuleSnubs, Snubs, Descent, BrakingEvents, SpeedLog {

    /** The builder's name for it. */
    String name();
}
