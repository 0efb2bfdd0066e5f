package org.brakewright.findings.rules;

import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** What meeting a limit is worth. */
final class Standing {
    private Standing() {}

    /** A limit recalled from memory never alone decides a pass. */
    static State whenMet(Tag tag) {
        return tag == Tag.FROM_MEMORY ? State.CANNOT_TELL : State.FINE;
    }
}
