package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.intent.Use;
import org.brakewright.model.resolved.ResolvedApply;

/**
 * A balance that can be changed with a spanner or a knob is a legal question on the road: an approval scheme wants it
 * mechanically disabled and labelled (UK individual approval, from a secondary source).
 */
public final class AdjustableBalance implements Rule {
    @Override
    public String key() {
        return "adjustable_balance";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        if (facts.build().use() == Use.TRACK) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        if (facts.build().apply() instanceof ResolvedApply.Twin twin) {
            findings.add(Judged.as(state(twin), this)
                    .about("balance bar")
                    .inputs("apply.balance_bar.locked_for_road")
                    .finding());
        }
        if (facts.build().apply().valve().map(ResolvedApply.Valve::adjustable).orElse(false)) {
            findings.add(Judged.as(State.CAUTION, this)
                    .about("proportioning valve")
                    .inputs("apply.proportioning_valve.adjustable")
                    .finding());
        }
        return List.copyOf(findings);
    }

    private static State state(ResolvedApply.Twin twin) {
        return twin.bar()
                .lockedForRoad()
                .map(locked -> locked ? State.FINE : State.CAUTION)
                .orElse(State.CANNOT_TELL);
    }
}
