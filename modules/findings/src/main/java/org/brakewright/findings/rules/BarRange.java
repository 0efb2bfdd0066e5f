package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.balance.BarState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Turns left on the balance bar both ways, so that pads and tyres can still be matched on the road. */
public final class BarRange implements Rule {
    /** An estimate: pads and loads move the balance by about this much. */
    private static final double LEAST_TURNS = 2;

    @Override
    public String key() {
        return "bar_range";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        BarState bar = facts.analysis().bar();
        if (bar == null) {
            return List.of();
        }
        double left = Math.min(bar.turnsLeftToFront(), bar.turnsLeftToRear());
        return List.of(Judged.as(left < LEAST_TURNS ? State.CAUTION : State.FINE, this)
                .found(Figure.ratio(left))
                .against(Figure.ratio(LEAST_TURNS), "estimate, to match pads and tyres on the road", Tag.ESTIMATE)
                .with("to_front", Figure.ratio(bar.turnsLeftToFront()))
                .with("to_rear", Figure.ratio(bar.turnsLeftToRear()))
                .with("front_share", Figure.ratio(bar.frontShare()))
                .with("least_front_share", Figure.ratio(bar.leastFrontShare()))
                .with("most_front_share", Figure.ratio(bar.mostFrontShare()))
                .inputs("apply.balance_bar.offset", "apply.balance_bar.offset_limit")
                .finding());
    }
}
