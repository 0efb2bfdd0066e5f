package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.pedal.PedalState;
import org.brakewright.analysis.pedal.PedalState.AtWork;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Angle between pushrod and master's axis: at the hard stop, and on the way to the pedal's stop. */
public final class RodAngle implements Rule {
    private static final double MOST = Math.toRadians(5);

    @Override
    public String key() {
        return "rod_angle";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        PedalState pedal = facts.analysis().pedal();
        AtWork work = pedal.atHardStop();
        boolean known = pedal.mechanism() || pedal.greatestRodOffAxisRad() > 0;
        if (!known || work == null) {
            return List.of();
        }
        double atWork = work.rodOffAxisRad();
        boolean steepAtWork = atWork > MOST;
        boolean steepElsewhere = pedal.greatestRodOffAxisRad() > MOST;
        return List.of(Judged.as(steepAtWork || steepElsewhere ? State.CAUTION : State.FINE, this)
                .saying(variant(pedal.mechanism(), steepElsewhere && !steepAtWork))
                .found(Figure.angle(steepAtWork ? atWork : pedal.greatestRodOffAxisRad()))
                .against(Figure.angle(MOST), "estimate; straight at working load is the goal", Tag.ESTIMATE)
                .with("at_work", Figure.angle(atWork))
                .with("side", Figure.force(work.sideForceN()))
                .inputs("pedal.mechanism.socket_up", "pedal.mechanism.axis_rise", "apply.balance_bar.master_spacing")
                .finding());
    }

    private static String variant(boolean mechanism, boolean onlyElsewhere) {
        if (!mechanism) {
            return "across";
        }
        return onlyElsewhere ? "on_the_way" : "";
    }
}
