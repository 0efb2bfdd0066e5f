package org.brakewright.findings.cure;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.ledger.Headline;
import org.brakewright.findings.Finding;
import org.brakewright.findings.State;
import org.jspecify.annotations.Nullable;

/**
 * What one change did.
 *
 * @param after findings after it
 * @param newStop whether something became a stop that was none
 * @param worse judgements that got worse, as they stand now
 * @param headline after it
 */
record Trial(List<Finding> after, boolean newStop, List<Finding> worse, Headline headline) {
    /** A change that contradicts what the builder gave. */
    static final Trial IMPOSSIBLE = new Trial(List.of(), true, List.of(), new Headline(null, null, null, null, 0));

    static Trial compare(List<Finding> before, List<Finding> after, Headline headline) {
        boolean newStop = false;
        List<Finding> worse = new ArrayList<>();
        for (Finding now : after) {
            State then = stateOf(now, before);
            if (then == null || now.state().compareTo(then) < 0) {
                newStop |= now.state() == State.STOP;
                if (now.state() == State.STOP || now.state() == State.CAUTION) {
                    worse.add(now);
                }
            }
        }
        return new Trial(after, newStop, List.copyOf(worse), headline);
    }

    /** State of a judgement after the change; null when the change made it disappear. */
    @Nullable
    State stateOf(Finding finding) {
        return stateOf(finding, after);
    }

    private static @Nullable State stateOf(Finding finding, List<Finding> findings) {
        for (Finding other : findings) {
            if (other.sameJudgement(finding)) {
                return other.state();
            }
        }
        return null;
    }
}
