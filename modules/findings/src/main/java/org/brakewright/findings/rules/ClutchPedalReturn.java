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

/** Whether the clutch pedal comes back by itself from everywhere. Silent without a clutch. */
public final class ClutchPedalReturn implements Rule {

    @Override
    public String key() {
        return "clutch_pedal_return";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ClutchState clutch = facts.analysis().clutch();
        return clutch == null ? List.of() : List.of(judged(clutch));
    }

    private Finding judged(ClutchState clutch) {
        double least =
                Math.min(clutch.newPlate().leastReturnN(), clutch.wornPlate().leastReturnN());
        return Judged.as(least < 0 ? State.STOP : State.FINE, this)
                .found(Figure.force(least))
                .against(Figure.force(0), "a pedal that is let go must come home", Tag.COMMON_PRACTICE)
                .inputs(
                        "clutch.pedal_spring.spring_rate",
                        "clutch.pedal_spring.dead_centre",
                        "clutch.pedal_spring.force",
                        "clutch.master.spring_force")
                .finding();
    }
}
