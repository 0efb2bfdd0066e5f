package org.brakewright.buildfile;

/** What came of changing one value in the text of a build file. */
public sealed interface EditOutcome {
    /** The new text. */
    record Edited(String text) implements EditOutcome {}

    /** The text stays as it was, and why. */
    record Refused(LocatedProblem problem) implements EditOutcome {}
}
