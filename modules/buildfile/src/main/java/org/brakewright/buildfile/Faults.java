package org.brakewright.buildfile;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.model.Problem;

/** Collects the faults of one reading. */
final class Faults {
    private static final int LONGEST_SHOWN = 80;

    private final List<LocatedProblem> found = new ArrayList<>();

    void add(Span at, Problem problem) {
        found.add(new LocatedProblem(at.line(), at.column(), problem));
    }

    void addAll(List<LocatedProblem> others) {
        found.addAll(others);
    }

    boolean none() {
        return found.isEmpty();
    }

    /** All faults by their place; those of one place in the order in which they were found. */
    List<LocatedProblem> sorted() {
        return found.stream().sorted(LocatedProblem.BY_PLACE).toList();
    }

    /** A text as it is shown in a message: on one line and not endless. */
    static String shown(String text) {
        String line = text.replaceAll("\\R", " ");
        return line.length() <= LONGEST_SHOWN ? line : line.substring(0, LONGEST_SHOWN - 3) + "...";
    }
}
