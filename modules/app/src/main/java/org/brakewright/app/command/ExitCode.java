package org.brakewright.app.command;

import org.brakewright.findings.Assessment;
import org.brakewright.findings.State;

/** Exit codes of the command line. */
public final class ExitCode {
    /** Nothing forbids it. */
    public static final int FINE = 0;

    /** A finding says stop. */
    public static final int STOP = 1;

    /** The input cannot be used. */
    public static final int UNUSABLE = 2;

    private ExitCode() {}

    static int of(Assessment assessment) {
        return assessment.verdict() == State.STOP ? STOP : FINE;
    }
}
