package org.brakewright.analysis.hydraulics;

/** What takes pedal travel. */
public enum Cause {
    /** The pedal moves before the pushrod does. */
    FREE_PLAY,
    /** Pins and clevises have slack. */
    SLACK,
    /** The master's piston moves before its port is closed. */
    LOST_STROKE,
    /** Pads or shoes come to disc or drum. */
    CLEARANCE,
    /** Pads pushed back by corners and rough roads come to the disc. */
    KNOCK_BACK,
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
    /** The balance bar turns about pins that do not lie in line with its bearing. */
    BAR,
    /** Firewall and bracket give. */
    MOUNT,
    /** The pedal arm bends. */
    ARM
}
