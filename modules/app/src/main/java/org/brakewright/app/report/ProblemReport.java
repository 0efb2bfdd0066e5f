package org.brakewright.app.report;

import java.util.List;
import org.brakewright.buildfile.LocatedProblem;
import org.brakewright.model.Problem;

/** Everything that is wrong with a build file, as text. */
public final class ProblemReport {
    private ProblemReport() {}

    /** The problems of a file, each with its place, value, reason and what is allowed. */
    public static String write(String file, List<LocatedProblem> problems) {
        StringBuilder text = new StringBuilder();
        text.append("This build file cannot be used yet: ")
                .append(problems.size())
                .append(problems.size() == 1 ? " problem.\n" : " problems.\n");
        problems.forEach(problem -> text.append(one(file, problem)));
        return text.toString();
    }

    private static String one(String file, LocatedProblem located) {
        Problem problem = located.problem();
        StringBuilder text = new StringBuilder();
        text.append('\n')
                .append(file)
                .append(':')
                .append(located.line())
                .append(':')
                .append(located.column());
        if (!problem.path().isEmpty()) {
            text.append("  ").append(problem.path());
        }
        text.append("\n  ").append(problem.message()).append('\n');
        if (!problem.path().isEmpty() && !problem.value().isEmpty()) {
            text.append("  written: ").append(problem.value()).append('\n');
        }
        if (!problem.allowed().isEmpty()) {
            text.append("  allowed: ").append(problem.allowed()).append('\n');
        }
        return text.toString();
    }
}
