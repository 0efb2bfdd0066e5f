package org.brakewright.findings;

import java.util.List;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.feel.Feel;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.analysis.ledger.LedgerEntry;
import org.brakewright.analysis.solution.Solution;
import org.brakewright.model.Build;
import org.brakewright.model.resolved.ResolvedBuild;

/**
 * Build, numbers and judgements together.
 *
 * @param build as written
 * @param resolved complete and in SI
 * @param analysis every number
 * @param headline the results that the verdict stands on
 * @param feel the pedal as assumed, as firm and as soft as it may be
 * @param solution how well everything told agrees
 * @param findings worst first
 * @param ledger what was assumed, heaviest first
 */
public record Assessment(
        Build build,
        ResolvedBuild resolved,
        Analysis analysis,
        Headline headline,
        Feel feel,
        Solution solution,
        List<Finding> findings,
        List<LedgerEntry> ledger) {

    /** State of the worst finding. */
    public State verdict() {
        return findings.isEmpty() ? State.CANNOT_TELL : findings.getFirst().state();
    }
}
