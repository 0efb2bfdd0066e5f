package org.brakewright.findings;

/** How a finding stands, worst first. */
public enum State {
    /** Must not be driven or cut like this. */
    STOP,
    /** Works, but not as it should. */
    CAUTION,
    /** Something has to be measured or looked at first. */
    CANNOT_TELL,
    /** Within every limit that was looked at. */
    FINE
}
