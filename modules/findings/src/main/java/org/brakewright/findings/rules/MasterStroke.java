package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Limit;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/** Stroke left in each master or chamber at the hard stop. */
public final class MasterStroke implements Rule {
    @Override
    public String key() {
        return "master_stroke";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        HardStop stop = facts.analysis().hardStop();
        if (stop == null) {
            return List.of();
        }
        Limit least = facts.aim("least_stroke_left", Figure.ratio(facts.aims().leastStrokeLeft()));
        return List.of(
                side(
                        "front",
                        stop.frontStrokeLeftShare(),
                        stop.frontStrokeLeftM(),
                        stop.point().frontStrokeM(),
                        least),
                side(
                        "rear",
                        stop.rearStrokeLeftShare(),
                        stop.rearStrokeLeftM(),
                        stop.point().rearStrokeM(),
                        least));
    }

    private Finding side(String end, double share, double left, double used, Limit least) {
        return Judged.as(state(share, least.figure().value()), this)
                .about(end)
                .found(Figure.ratio(share))
                .against(least)
                .with("left", Figure.length(left))
                .with("used", Figure.length(used))
                .inputs(
                        "apply." + end + "_master.stroke",
                        "apply." + end + "_master.bore",
                        "apply.primary_stroke",
                        "apply.secondary_stroke",
                        "apply.bore")
                .finding();
    }

    private static State state(double share, double least) {
        if (share < 0) {
            return State.STOP;
        }
        return share < least ? State.CAUTION : State.FINE;
    }
}
