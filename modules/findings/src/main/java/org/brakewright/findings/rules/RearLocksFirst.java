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
import org.jspecify.annotations.Nullable;

/**
 * The rear wheels must not lock before the front ones anywhere up to the car's grip: a car with locked rear wheels
 * turns round. Below 0.15 g, where the published rules begin too, nothing is judged.
 */
public final class RearLocksFirst implements Rule {
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
        RearFirst stretch = first(loadCase);
        double critical = stretch == null ? Double.POSITIVE_INFINITY : stretch.fromG();
        Judged judged = Judged.as(state(critical, grip, beyond), this)
                .about(loadCase.name())
                .with("grip", Figure.ratio(grip))
                .inputs("apply.balance_bar.offset", "front.pad_friction", "rear.pad_friction");
        describe(judged, stretch, critical < grip);
        return judged.against(
                        Figure.g(critical < grip ? grip : beyond),
                        "the car's grip with the margin asked for; rear wheels that lock first turn a car round",
                        Tag.COMMON_PRACTICE)
                .finding();
    }

    /** A stretch that ends, as before the knee of a valve, is told with its end while it is within the grip. */
    static void describe(Judged judged, @Nullable RearFirst stretch, boolean withinGrip) {
        if (stretch == null) {
            judged.saying("never");
            return;
        }
        Double end = stretch.toG();
        if (end != null && withinGrip) {
            judged.saying("between").with("to", Figure.g(end));
        } else if (stretch.fromG() <= 0) {
            judged.saying("always");
            return;
        }
        judged.found(Figure.g(Math.max(RearFirst.JUDGED_FROM_G, stretch.fromG())));
    }

    /** The first stretch that reaches beyond where judging begins; they come rising. */
    private static @Nullable RearFirst first(LoadCaseResult loadCase) {
        for (RearFirst stretch : loadCase.rearFirst()) {
            if (stretch.matters()) {
                return stretch;
            }
        }
        return null;
    }

    private static State state(double critical, double grip, double beyond) {
        if (critical < grip) {
            return State.STOP;
        }
        return critical < beyond ? State.CAUTION : State.FINE;
    }
}
