package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Effort of the hard stop against what the builder wants, and against what a leg gives at all. */
public final class PedalEffort implements Rule {
    private static final String[] INPUTS = {
        "pedal.ratio", "apply.front_master.bore", "apply.rear_master.bore", "apply.bore"
    };

    @Override
    public String key() {
        return "pedal_effort";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        HardStop stop = facts.analysis().hardStop();
        double panic = facts.aims().panicPush();
        if (stop == null) {
            return List.of(Judged.as(State.STOP, this)
                    .saying("none")
                    .against(Figure.force(panic), "what a leg gives at all", Tag.COMMON_PRACTICE)
                    .with("hard_stop", Figure.g(facts.aims().hardStopG()))
                    .inputs(INPUTS)
                    .finding());
        }
        double effort = stop.point().pedalForceN();
        double aim = facts.aims().mostEffort();
        Judged judged = Judged.as(state(effort, aim, panic), this).found(Figure.force(effort));
        if (effort > panic) {
            judged.against(Figure.force(panic), "what a leg gives at all", Tag.COMMON_PRACTICE);
        } else {
            judged.against(facts.aim("most_effort", Figure.force(aim)));
        }
        return List.of(judged.with("hard_stop", Figure.g(stop.point().decelerationG()))
                .with("front_pressure", Figure.pressure(stop.point().frontPressurePa()))
                .with("rear_pressure", Figure.pressure(stop.point().rearPressurePa()))
                .inputs(INPUTS)
                .finding());
    }

    private static State state(double effort, double aim, double panic) {
        if (effort > panic) {
            return State.STOP;
        }
        return effort > aim ? State.CAUTION : State.FINE;
    }
}
