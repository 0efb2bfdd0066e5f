package org.brakewright.findings.cure;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Limit;
import org.brakewright.findings.State;
import org.jspecify.annotations.Nullable;

/**
 * What one change did. Findings stand in the order of the rules, so what matters more stands first.
 *
 * @param after findings after it
 * @param newStop whether something became a stop that was none
 * @param harmed stops that were stops before and went further beyond their limit
 * @param unmeasured stops that stay stops without a number, so that nobody can tell whether they got worse
 * @param worse judgements that got worse, as they stand now
 * @param headline after it
 */
record Trial(
        List<Finding> after,
        boolean newStop,
        List<Finding> harmed,
        List<Finding> unmeasured,
        List<Finding> worse,
        Headline headline) {
    /** A change that contradicts what the builder gave. */
    static final Trial IMPOSSIBLE = new Trial(
            List.of(), true, List.of(), List.of(), List.of(), new Headline(null, null, null, null, 0, null, null));

    private static final double ROUNDING = 1e-6;

    static Trial compare(List<Finding> before, List<Finding> after, Headline headline) {
        boolean newStop = false;
        List<Finding> harmed = new ArrayList<>();
        List<Finding> unmeasured = new ArrayList<>();
        List<Finding> worse = new ArrayList<>();
        for (Finding now : after) {
            Finding then = same(now, before);
            boolean stop = now.state() == State.STOP;
            if (then == null || now.state().compareTo(then.state()) < 0) {
                newStop |= stop;
                if (stop || now.state() == State.CAUTION) {
                    worse.add(now);
                }
            } else if (stop && beyond(now) > beyond(then) * (1 + ROUNDING)) {
                harmed.add(now);
                worse.add(now);
            } else if (stop && now.limit() != null && now.found() == null && then.found() == null) {
                unmeasured.add(now);
            }
        }
        return new Trial(after, newStop, List.copyOf(harmed), List.copyOf(unmeasured), List.copyOf(worse), headline);
    }

    /**
     * Whether the change must not be offered for a finding: it makes a new stop, or makes a stop worse, or may do so, that
     * matters as much or more. That a lesser stop gets worse is a cost, and named.
     */
    boolean refusedFor(Finding finding) {
        int rank = after.indexOf(same(finding, after));
        return newStop
                || harmed.stream().anyMatch(stop -> stop.key().equals(finding.key()) || after.indexOf(stop) < rank)
                || unmeasured.stream()
                        .anyMatch(stop -> !stop.key().equals(finding.key()) && after.indexOf(stop) < rank);
    }

    /** State of a judgement after the change; null when the change made it disappear. */
    @Nullable
    State stateOf(Finding finding) {
        Finding now = same(finding, after);
        return now == null ? null : now.state();
    }

    /** How far a stop lies beyond its limit, SI; infinite without a number: always, or no push does it. */
    private static double beyond(Finding stop) {
        Figure found = stop.found();
        Limit limit = stop.limit();
        return found == null || limit == null
                ? Double.POSITIVE_INFINITY
                : Math.abs(found.value() - limit.figure().value());
    }

    private static @Nullable Finding same(Finding finding, List<Finding> findings) {
        for (Finding other : findings) {
            if (other.sameJudgement(finding)) {
                return other;
            }
        }
        return null;
    }
}
