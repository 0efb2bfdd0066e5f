package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Whether the clamp load of the part sheet and the force that releases it tell of the same cover. Silent without a clutch. */
public final class ClutchClampLoad implements Rule {
    /** Friction, cushion and finger ratio leave so much doubt between both; an estimate. */
    private static final double APART = 0.15;

    @Override
    public String key() {
        return "clutch_clamp_load";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ClutchState clutch = facts.analysis().clutch();
        Double given = clutch == null ? null : clutch.clampGivenN();
        return clutch == null || given == null ? List.of() : List.of(judged(given, clutch));
    }

    private Finding judged(double given, ClutchState clutch) {
        double apart = Math.abs(clutch.clampImpliedN() / given - 1);
        return Judged.as(apart > APART ? State.CAUTION : State.FINE, this)
                .found(Figure.ratio(apart))
                .against(Figure.ratio(APART), "doubt left by friction and finger ratio", Tag.ESTIMATE)
                .with("given", Figure.force(given))
                .with("implied", Figure.force(clutch.clampImpliedN()))
                .inputs("clutch.cover.clamp_load", "clutch.cover.release_load", "clutch.cover.finger_ratio")
                .finding();
    }
}
