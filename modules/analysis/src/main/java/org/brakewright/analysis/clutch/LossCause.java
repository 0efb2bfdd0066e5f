package org.brakewright.analysis.clutch;

/** What takes travel of the clutch pedal. */
public enum LossCause {
    /** The pedal moves before the pushrod does. */
    FREE_PLAY,
    /** Pins and clevises have slack. */
    SLACK,
    /** The master's piston moves before its port is closed. */
    LOST_STROKE,
    /** The bearing comes to the fingers. */
    GAP,
    /** Hoses swell. */
    HOSES,
    /** Tubes swell. */
    TUBES,
    /** The fluid itself is squeezed. */
    LIQUID,
    /** Air in the fluid is squeezed. */
    AIR,
    /** Fork and pivot give. */
    FORK,
    /** Firewall and bracket give. */
    MOUNT,
    /** The pedal arm bends. */
    ARM,
    /** What arrives: the fingers move. */
    FINGERS
}
