package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.pedal.PedalState;
import org.brakewright.analysis.pedal.PedalState.GivesWay;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Limit;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Whether the pedal's mechanism passes over centre, or gives way, before the pedal meets its stop. */
public final class OverCentre implements Rule {
    /** Growth of the ratio from rest, an estimate: beyond it the last travel has little force behind it. */
    private static final double MOST_GROWTH = 1.5;

    @Override
    public String key() {
        return "over_centre";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        PedalState pedal = facts.analysis().pedal();
        return pedal.mechanism() ? List.of(finding(facts, pedal)) : List.of();
    }

    private Finding finding(Facts facts, PedalState pedal) {
        Double overCentre = pedal.overCentreM();
        if (overCentre != null) {
            return told(State.STOP, pedal)
                    .found(Figure.length(overCentre))
                    .against(
                            Figure.length(facts.build().pedal().travelToStop()),
                            "the pedal's stop, which must come first",
                            Tag.COMMON_PRACTICE)
                    .finding();
        }
        GivesWay givesWay = pedal.givesWay();
        return givesWay == null ? byRatio(pedal) : givingWay(facts, pedal, givesWay);
    }

    private Finding givingWay(Facts facts, PedalState pedal, GivesWay givesWay) {
        Limit panic = facts.aim("panic_push", Figure.force(facts.aims().panicPush()));
        boolean reached = givesWay.pedalForceN() <= panic.figure().value();
        return told(reached ? State.STOP : State.CAUTION, pedal)
                .saying("gives_way")
                .found(Figure.force(givesWay.pedalForceN()))
                .against(panic.figure(), "push of a frightened leg", panic.tag())
                .with("travel", Figure.length(givesWay.padTravelM()))
                .finding();
    }

    private Finding byRatio(PedalState pedal) {
        double growth = pedal.greatestRatio() / pedal.ratioAtRest();
        return told(growth > MOST_GROWTH ? State.CAUTION : State.FINE, pedal)
                .found(Figure.ratio(growth))
                .against(
                        Figure.ratio(MOST_GROWTH),
                        "estimate; a ratio that runs up this far nears over-centre",
                        Tag.ESTIMATE)
                .finding();
    }

    private Judged told(State state, PedalState pedal) {
        return Judged.as(state, this)
                .with("at_rest", Figure.ratio(pedal.ratioAtRest()))
                .with("at_stop", Figure.ratio(pedal.ratioAtStop()))
                .inputs(
                        "pedal.mechanism.pin_forward",
                        "pedal.mechanism.pin_up",
                        "pedal.mechanism.socket_up",
                        "pedal.travel_to_stop");
    }
}
