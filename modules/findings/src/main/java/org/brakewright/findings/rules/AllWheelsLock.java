package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;

/** A student competition asks that one push can lock all four wheels. */
public final class AllWheelsLock implements Rule {
    @Override
    public String key() {
        return "all_wheels_lock";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        if (!facts.answersTo(RuleSet.STUDENT_COMPETITION)) {
            return List.of();
        }
        double most = 0;
        for (LoadCaseResult loadCase : facts.analysis().loadCases()) {
            Double force = loadCase.allLockedForceN();
            most = Math.max(most, force == null ? Double.POSITIVE_INFINITY : force);
        }
        double panic = facts.aims().panicPush();
        Judged judged = Judged.as(most > panic ? State.STOP : State.FINE, this)
                .against(Figure.force(panic), "Formula SAE 2019 T.5.1, able to lock all four wheels", Tag.SECONDARY)
                .with("grip", Figure.ratio(facts.analysis().grip()))
                .inputs("pedal.ratio", "car.grip");
        boolean locks = most < Double.POSITIVE_INFINITY;
        return List.of((locks ? judged.found(Figure.force(most)) : judged.saying("none")).finding());
    }
}
