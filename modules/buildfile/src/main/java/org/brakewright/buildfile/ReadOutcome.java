package org.brakewright.buildfile;

import java.util.List;
import org.brakewright.model.Build;

/** What came of reading a build file: a build, or everything that is wrong with the file. */
public sealed interface ReadOutcome {
    /**
     * The file states a build.
     *
     * @param build the build as written
     * @param places where each key stands, for problems found later
     */
    record Usable(Build build, Places places) implements ReadOutcome {}

    /**
     * The file states no build.
     *
     * @param problems all of them, at least one, by line and column
     */
    record Unusable(List<LocatedProblem> problems) implements ReadOutcome {
        public Unusable {
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("problems must not be empty");
            }
            problems = List.copyOf(problems);
        }
    }
}
