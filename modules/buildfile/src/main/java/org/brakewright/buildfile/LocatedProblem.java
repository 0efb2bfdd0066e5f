package org.brakewright.buildfile;

import java.util.Comparator;
import org.brakewright.model.Problem;

/**
 * A problem with its place in the text.
 *
 * @param line line, the first is 1
 * @param column character within the line, the first is 1
 * @param problem what is wrong and what would be accepted
 */
public record LocatedProblem(int line, int column, Problem problem) {
    static final Comparator<LocatedProblem> BY_PLACE =
            Comparator.comparingInt(LocatedProblem::line).thenComparingInt(LocatedProblem::column);

    public LocatedProblem {
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("line and column must be 1 or more, were " + line + ":" + column);
        }
    }
}
