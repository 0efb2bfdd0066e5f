package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.balance.EfficiencyLine;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.intent.RuleSet;
import org.jspecify.annotations.Nullable;

/** UN R13-H asks z >= 0.1 + 0.70 (k - 0.2) at the first lock, for grips k from 0.2 to 0.8. */
public final class AdhesionEfficiency implements Rule {
    private static final double ROUNDING = 1e-9;

    @Override
    public String key() {
        return "adhesion_efficiency";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        if (!facts.answersTo(RuleSet.UN_R13H)) {
            return List.of();
        }
        Lock worst = worst(facts);
        if (worst == null) {
            return List.of();
        }
        double needed = EfficiencyLine.needed(worst.grip());
        State state = worst.decelerationG() < needed ? State.STOP : Standing.whenMet(Tag.FROM_MEMORY);
        return List.of(Judged.as(state, this)
                .found(Figure.g(worst.decelerationG()))
                .against(Figure.g(needed), "UN R13-H Annex 5, 3.1", Tag.FROM_MEMORY)
                .with("grip", Figure.ratio(worst.grip()))
                .inputs("apply.balance_bar.offset", "apply.front_master.bore", "apply.rear_master.bore")
                .finding());
    }

    private static @Nullable Lock worst(Facts facts) {
        Lock worst = null;
        for (LoadCaseResult loadCase : facts.analysis().loadCases()) {
            for (Lock lock : loadCase.lock()) {
                boolean judged = lock.grip() >= EfficiencyLine.FROM_GRIP - ROUNDING
                        && lock.grip() <= EfficiencyLine.TO_GRIP + ROUNDING;
                if (judged && (worst == null || margin(lock) < margin(worst))) {
                    worst = lock;
                }
            }
        }
        return worst;
    }

    private static double margin(Lock lock) {
        return lock.decelerationG() - EfficiencyLine.needed(lock.grip());
    }
}
