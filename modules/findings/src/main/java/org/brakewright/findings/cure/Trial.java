package org.brakewright.findings.cure;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Limit;
import org.brakewright.findings.State;
import org.jspecify.annotations.Nullable;

/**
 * What one change did.
 *
 * @param after findings after it
 * @param newStop whether something became a stop that was none, or a stop went further beyond its limit
 * @param unmeasured keys of stops that stay stops without a number, so that nobody can tell whether they got worse
 * @param worse judgements that got worse, as they stand now
 * @param headline after it
 */
record Trial(List<Finding> after, boolean newStop, Set<String> unmeasured, List<Finding> worse, Headline headline) {
    /** A change that contradicts what the builder gave. */
    static final Trial IMPOSSIBLE =
            new Trial(List.of(), true, Set.of(), List.of(), new Headline(null, null, null, null, 0));

    private static final double ROUNDING = 1e-6;

    static Trial compare(List<Finding> before, List<Finding> after, Headline headline) {
        boolean newStop = false;
        Set<String> unmeasured = new HashSet<>();
        List<Finding> worse = new ArrayList<>();
        for (Finding now : after) {
            Finding then = same(now, before);
            if (then == null || now.state().compareTo(then.state()) < 0) {
                newStop |= now.state() == State.STOP;
                if (now.state() == State.STOP || now.state() == State.CAUTION) {
                    worse.add(now);
                }
            } else if (now.state() == State.STOP && now.limit() != null) {
                newStop |= beyond(now) > beyond(then) * (1 + ROUNDING);
                if (now.found() == null && then.found() == null) {
                    unmeasured.add(now.key());
                }
            }
        }
        return new Trial(after, newStop, Set.copyOf(unmeasured), List.copyOf(worse), headline);
    }

    /** Whether the change must not be offered for a finding: it makes, or may make, a stop worse. */
    boolean refusedFor(Finding finding) {
        return newStop || unmeasured.stream().anyMatch(key -> !key.equals(finding.key()));
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
