package org.brakewright.findings.cure;

import java.util.List;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;

/**
 * A single change that makes a finding better.
 *
 * @param change what to do
 * @param becomes state of the finding after it
 * @param worse judgements that get worse by it, as they stand after it; a stop only when it was one and matters less
 * @param after headline of the car after it
 */
public record Cure(Change change, State becomes, List<Finding> worse, Headline after) {}
