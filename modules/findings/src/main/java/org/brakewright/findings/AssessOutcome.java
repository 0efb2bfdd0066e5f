package org.brakewright.findings;

import java.util.List;
import org.brakewright.model.Problem;

/** How assessing a build ended. */
public sealed interface AssessOutcome {

    /**
     * Assessed.
     *
     * @param assessment build, numbers and judgements
     */
    record Assessed(Assessment assessment) implements AssessOutcome {}

    /**
     * Values contradict each other.
     *
     * @param problems all of them
     */
    record Unusable(List<Problem> problems) implements AssessOutcome {}
}
