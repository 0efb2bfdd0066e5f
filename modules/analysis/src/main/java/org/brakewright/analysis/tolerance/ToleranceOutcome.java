package org.brakewright.analysis.tolerance;

import java.util.List;
import org.brakewright.model.Problem;

/** How a tolerance run ended. */
public sealed interface ToleranceOutcome {

    /**
     * To the end.
     *
     * @param tolerance what became of the results
     */
    record Done(Tolerance tolerance) implements ToleranceOutcome {}

    /** Somebody wanted the answer no longer. */
    record Cancelled() implements ToleranceOutcome {}

    /**
     * The car as it stands contradicts itself.
     *
     * @param problems all of them
     */
    record Unusable(List<Problem> problems) implements ToleranceOutcome {}
}
