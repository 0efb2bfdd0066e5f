package org.brakewright.findings;

import org.brakewright.analysis.Analysis;
import org.brakewright.model.intent.RuleSet;
import org.brakewright.model.resolved.Aims;
import org.brakewright.model.resolved.ResolvedBuild;

/**
 * What rules look at.
 *
 * @param build complete and in SI
 * @param analysis its numbers
 */
public record Facts(ResolvedBuild build, Analysis analysis) {

    /** What the builder wants. */
    public Aims aims() {
        return build.aims();
    }

    /** Whether the builder chose a rule set. */
    public boolean answersTo(RuleSet ruleSet) {
        return build.ruleSets().contains(ruleSet);
    }
}
