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

/** Whether gap or room behind the slave lasts until the plate is worn. Silent without a clutch. */
public final class ClutchWearRoom implements Rule {

    @Override
    public String key() {
        return "clutch_wear_room";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ClutchState clutch = facts.analysis().clutch();
        return clutch == null ? List.of() : List.of(judged(clutch));
    }

    private Finding judged(ClutchState clutch) {
        double left = clutch.wearRoomM();
        return Judged.as(left < 0 ? State.CAUTION : State.FINE, this)
                .saying(clutch.inContact() ? "contact" : "gap")
                .found(Figure.length(left))
                .against(Figure.length(0), "what must be left when the plate is worn", Tag.DERIVED)
                .with("rise", Figure.length(clutch.fingerRiseM()))
                .with("room", Figure.length(clutch.fingerRiseM() + left))
                .with("missing", Figure.length(Math.max(0, -left)))
                .inputs(
                        "clutch.bearing.gap",
                        "clutch.bearing.preload",
                        "clutch.slave.stroke",
                        "clutch.plate.wear",
                        "clutch.cover.finger_ratio")
                .finding();
    }
}
