package org.brakewright.findings.cure;

import org.brakewright.analysis.ledger.Headline;
import org.brakewright.findings.State;

/**
 * A single change that makes a finding better.
 *
 * @param change what to do
 * @param becomes state of the finding after it
 * @param costs true when another finding gets worse by it, though none becomes a stop
 * @param after headline of the car after it
 */
public record Cure(Change change, State becomes, boolean costs, Headline after) {}
