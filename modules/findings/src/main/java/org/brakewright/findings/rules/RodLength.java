package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.balance.BarState;
import org.brakewright.analysis.balance.RodLengthEffect;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/** Explains what a longer rod does to the balance, against a turn of the adjuster: rod length does not set the balance. */
public final class RodLength implements Rule {
    /** Share of a turn's effect from which on the rod's own is told apart. */
    private static final double TOLD = 0.1;

    @Override
    public String key() {
        return "rod_length";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        BarState bar = facts.analysis().bar();
        RodLengthEffect effect = bar == null ? null : bar.rodLength();
        if (effect == null) {
            return List.of();
        }
        double byRod = Math.abs(effect.shareChange());
        double byTurn = Math.abs(effect.shareChangeByTurn());
        return List.of(Judged.as(State.FINE, this)
                .saying(byRod > TOLD * byTurn ? "moves" : "")
                .found(Figure.ratio(byRod))
                .with("longer", Figure.length(effect.longerM()))
                .with("tilt", Figure.angle(Math.abs(effect.tiltChangeRad())))
                .with("turn", Figure.ratio(byTurn))
                .inputs("apply.balance_bar.rest_lead", "apply.balance_bar.offset")
                .finding());
    }
}
