package org.brakewright.analysis.ledger;

import org.brakewright.analysis.resolve.Assumption;

/**
 * An assumption with what it does to the results.
 *
 * @param assumption value, range and basis
 * @param atLow headline with the value at the lower end of its range
 * @param atHigh headline with the value at the upper end
 * @param weight how much it matters: the largest movement over the builder's own limits; 1 more when a limit is crossed
 */
public record LedgerEntry(Assumption assumption, Headline atLow, Headline atHigh, double weight) {}
