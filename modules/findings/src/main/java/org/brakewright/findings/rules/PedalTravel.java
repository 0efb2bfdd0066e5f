package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/** Pedal travel of the hard stop against what the builder wants. */
public final class PedalTravel implements Rule {
    @Override
    public String key() {
        return "pedal_travel";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        HardStop stop = facts.analysis().hardStop();
        if (stop == null) {
            return List.of();
        }
        double travel = stop.point().pedalTravelM();
        double aim = facts.aims().mostTravel();
        return List.of(Judged.as(travel > aim ? State.CAUTION : State.FINE, this)
                .found(Figure.length(travel))
                .against(facts.aim("most_travel", Figure.length(aim)))
                .with("hard_stop", Figure.g(stop.point().decelerationG()))
                .inputs("pedal.ratio", "apply.front_master.bore", "apply.rear_master.bore", "apply.bore")
                .finding());
    }
}
