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

/** Whether the pedal pushes the release bearing further than the cover allows. Silent without a clutch. */
public final class ClutchOverTravel implements Rule {

    @Override
    public String key() {
        return "clutch_over_travel";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ClutchState clutch = facts.analysis().clutch();
        return clutch == null ? List.of() : List.of(judged(clutch));
    }

    private Finding judged(ClutchState clutch) {
        double found = clutch.furthest().bearingTravelM();
        double most = clutch.mostBearingTravelM();
        Double stop = clutch.stop().bestM();
        Judged judged = Judged.as(found > most ? State.STOP : State.FINE, this)
                .found(Figure.length(found))
                .against(Figure.length(most), "most bearing travel that the cover allows", Tag.PART_SHEET)
                .with("pedal_end", Figure.length(clutch.pedalEndM()))
                .inputs(
                        "clutch.pedal.travel_to_stop",
                        "clutch.cover.most_bearing_travel",
                        "clutch.master.bore",
                        "clutch.master.stroke");
        return stop == null
                ? judged.saying(found > most ? "no_stop" : "").finding()
                : judged.with("stop", Figure.length(stop))
                        .saying(found > most ? "" : "stop")
                        .finding();
    }
}
