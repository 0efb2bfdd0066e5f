package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.jspecify.annotations.Nullable;

/** Front share against the ideal one, judged by the grip that the car leaves unused when its first wheel locks. */
public final class FrontShare implements Rule {
    /** An estimate: below this the car stops noticeably longer than its tyres allow. */
    private static final double LEAST_EFFICIENCY = 0.80;

    @Override
    public String key() {
        return "front_share";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        HardStop stop = facts.analysis().hardStop();
        Lock worst = worst(facts);
        if (stop == null || worst == null) {
            return List.of();
        }
        return List.of(Judged.as(worst.efficiency() < LEAST_EFFICIENCY ? State.CAUTION : State.FINE, this)
                .found(Figure.ratio(worst.efficiency()))
                .against(Figure.ratio(LEAST_EFFICIENCY), "estimate for a car that uses its tyres", Tag.ESTIMATE)
                .with("front_share", Figure.ratio(stop.frontShare()))
                .with("ideal_front_share", Figure.ratio(stop.idealFrontShare()))
                .with("hard_stop", Figure.g(stop.point().decelerationG()))
                .with("lock", Figure.g(worst.decelerationG()))
                .with("grip", Figure.ratio(worst.grip()))
                .inputs("apply.balance_bar.offset", "apply.front_master.bore", "apply.rear_master.bore")
                .finding());
    }

    private static @Nullable Lock worst(Facts facts) {
        Lock worst = null;
        for (LoadCaseResult loadCase : facts.analysis().loadCases()) {
            Lock lock = loadCase.gripLock();
            if (lock != null && (worst == null || lock.efficiency() < worst.efficiency())) {
                worst = lock;
            }
        }
        return worst;
    }
}
