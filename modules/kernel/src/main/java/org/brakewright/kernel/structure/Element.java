package org.brakewright.kernel.structure;

/** A thing that resists when its nodes move. */
public sealed interface Element permits Beam, Shell, Spring {
    /** The part it belongs to, for messages. */
    String part();

    /** The nodes it touches; a spring to ground touches one. */
    int[] nodes();
}
