package org.brakewright.app.command;

import java.nio.file.Path;
import java.util.List;
import org.brakewright.app.report.ProblemReport;
import org.brakewright.buildfile.LocatedProblem;
import picocli.CommandLine;

/** Tells that a build file cannot be used, and why. */
final class Refusals {
    private Refusals() {}

    /** Prints all problems of a file and returns the exit code for it. */
    static int print(CommandLine line, Path file, List<LocatedProblem> problems) {
        line.getErr().print(ProblemReport.write(file.toString(), problems));
        line.getErr().flush();
        return ExitCode.UNUSABLE;
    }
}
