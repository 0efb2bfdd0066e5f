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

/** Tilt of the bar at the hard stop as solved, from how it rests, against the tilt at which it binds. */
public final class BarTilt implements Rule {
    private static final double COMFORTABLE_SHARE = 0.5;

    @Override
    public String key() {
        return "bar_tilt";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        BarState bar = facts.analysis().bar();
        if (bar == null || facts.analysis().hardStop() == null) {
            return List.of();
        }
        double tilt = Math.abs(bar.tiltRad());
        double limit = bar.tiltLimitRad();
        return List.of(Judged.as(state(tilt, limit), this)
                .saying(bar.tiltRad() >= 0 ? "front" : "rear")
                .found(Figure.angle(tilt))
                .against(
                        Figure.angle(tilt >= limit ? limit : COMFORTABLE_SHARE * limit),
                        "half of the tilt at which the bar binds; square at working load is the goal",
                        Tag.COMMON_PRACTICE)
                .with("binds", Figure.angle(limit))
                .inputs("apply.front_master.bore", "apply.rear_master.bore", "apply.balance_bar.tilt_limit")
                .finding());
    }

    private static State state(double tilt, double limit) {
        if (tilt >= limit) {
            return State.STOP;
        }
        return tilt > COMFORTABLE_SHARE * limit ? State.CAUTION : State.FINE;
    }
}
