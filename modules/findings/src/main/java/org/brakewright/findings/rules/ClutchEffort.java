package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.clutch.PlateState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/** The most effort of the clutch pedal. Silent without a clutch. */
public final class ClutchEffort implements Rule {

    @Override
    public String key() {
        return "clutch_effort";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ClutchState clutch = facts.analysis().clutch();
        return clutch == null ? List.of() : List.of(judged(facts, clutch));
    }

    private Finding judged(Facts facts, ClutchState clutch) {
        PlateState plate = clutch.heaviest();
        double most = facts.build().clutch().orElseThrow().limits().mostEffort();
        boolean beyond = clutch.newPlate().beyondData();
        State within = beyond ? State.CANNOT_TELL : State.FINE;
        return Judged.as(plate.mostEffortN() > most ? State.CAUTION : within, this)
                .found(Figure.force(plate.mostEffortN()))
                .against(facts.aim(
                        "clutch.most_effort",
                        Figure.force(most),
                        "aim for the clutch pedal",
                        "aim assumed for the clutch pedal"))
                .with("at_free", Figure.force(plate.effortAtFreeN()))
                .with("clamp", Figure.force(clutch.clampImpliedN()))
                .inputs(
                        "clutch.pedal.ratio",
                        "clutch.master.bore",
                        "clutch.cover.release_load",
                        "clutch.cover.clamp_load",
                        "clutch.release_efficiency")
                .finding();
    }
}
