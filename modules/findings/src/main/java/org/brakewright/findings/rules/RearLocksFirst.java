package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/**
 * The rear wheels must not lock before the front ones anywhere up to the car's grip: a car with locked rear wheels
 * turns round. Below 0.15 g, where the published rules begin too, nothing is judged.
 */
public final class RearLocksFirst implements Rule {
    private static final double FROM_G = 0.15;

    @Override
    public String key() {
        return "rear_locks_first";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        return facts.analysis().loadCases().stream()
                .map(loadCase -> judge(facts, loadCase))
                .toList();
    }

    private Finding judge(Facts facts, LoadCaseResult loadCase) {
        double grip = facts.analysis().grip();
        double beyond = grip * (1 + facts.aims().balanceMargin());
        double critical = critical(loadCase);
        Judged judged = Judged.as(state(critical, grip, beyond), this)
                .about(loadCase.name())
                .with("grip", Figure.ratio(grip))
                .inputs("apply.balance_bar.offset", "front.pad_friction", "rear.pad_friction");
        if (critical <= 0) {
            judged.saying("always");
        } else if (critical < Double.POSITIVE_INFINITY) {
            judged.found(Figure.g(critical));
        } else {
            judged.saying("never");
        }
        return judged.against(
                        Figure.g(critical < grip ? grip : beyond),
                        "the car's grip with the margin asked for; rear wheels that lock first turn a car round",
                        Tag.COMMON_PRACTICE)
                .finding();
    }

    private static double critical(LoadCaseResult loadCase) {
        double least = Double.POSITIVE_INFINITY;
        for (RearFirst stretch : loadCase.rearFirst()) {
            if (stretch.toG() == null || stretch.toG() > FROM_G) {
                least = Math.min(least, stretch.fromG());
            }
        }
        return least;
    }

    private static State state(double critical, double grip, double beyond) {
        if (critical < grip) {
            return State.STOP;
        }
        return critical < beyond ? State.CAUTION : State.FINE;
    }
}
