package org.brakewright.analysis.resolve;

import java.util.List;
import org.brakewright.model.Problem;
import org.brakewright.model.resolved.ResolvedBuild;

/** How resolving a build ended. */
public sealed interface Resolution {

    /**
     * Ready for computing.
     *
     * @param build complete and in SI
     * @param ledger what was assumed, in the order of the build file
     */
    record Resolved(ResolvedBuild build, List<Assumption> ledger) implements Resolution {}

    /**
     * Values contradict each other.
     *
     * @param problems all of them
     */
    record Unusable(List<Problem> problems) implements Resolution {}
}
