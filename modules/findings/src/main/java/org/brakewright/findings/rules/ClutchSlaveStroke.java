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

/** Whether the slave has the stroke for where the pedal pushes it. Silent without a clutch. */
public final class ClutchSlaveStroke implements Rule {
    /** Stroke at the bearing that is left for tolerances; an estimate. */
    private static final double SPARE = 1e-3;

    @Override
    public String key() {
        return "clutch_slave_stroke";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ClutchState clutch = facts.analysis().clutch();
        return clutch == null ? List.of() : List.of(judged(clutch));
    }

    private Finding judged(ClutchState clutch) {
        double left =
                Math.min(clutch.newPlate().extensionLeftM(), clutch.wornPlate().extensionLeftM());
        Double stop = clutch.stop().bestM();
        Judged judged = Judged.as(left < 0 ? State.STOP : left < SPARE ? State.CAUTION : State.FINE, this)
                .found(Figure.length(left))
                .against(Figure.length(SPARE), "stroke that the slave has left at the pedal's end", Tag.ESTIMATE)
                .with("most_pad", Figure.length(clutch.stop().mostM()))
                .inputs(
                        "clutch.slave.stroke",
                        "clutch.bearing.preload",
                        "clutch.bearing.gap",
                        "clutch.pedal.travel_to_stop");
        return stop == null || left >= SPARE
                ? judged.finding()
                : judged.with("stop", Figure.length(stop)).saying("stop").finding();
    }
}
