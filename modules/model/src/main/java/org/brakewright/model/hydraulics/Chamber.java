package org.brakewright.model.hydraulics;

/** A chamber of a tandem master. */
public enum Chamber {
    /** Next to the pushrod. */
    PRIMARY,
    /** Behind the floating piston. */
    SECONDARY
}
