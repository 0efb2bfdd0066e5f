package org.brakewright.analysis.hydraulics;

/** What takes pedal travel. */
public enum Cause {
    /** The pedal moves before the pushrod does. */
    FREE_PLAY,
    /** The master's piston moves before its port is closed. */
    LOST_STROKE,
    /** Pads or shoes come to disc or drum. */
    CLEARANCE,
    /** Calipers spread; shoes and drums give. */
    BRAKE_GIVE,
    /** Pads are squeezed. */
    PADS,
    /** Hoses swell. */
    HOSES,
    /** Tubes swell. */
    TUBES,
    /** The fluid itself is squeezed. */
    LIQUID,
    /** Air in the fluid is squeezed. */
    AIR,
    /** Firewall and bracket give. */
    MOUNT
}
