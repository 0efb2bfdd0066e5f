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

/** Pedal travel left at the hard stop. */
public final class PedalReserve implements Rule {
    /** Share of the travel that an Australian inspection wants left under firm braking, from a secondary source. */
    private static final double INSPECTION = 0.20;

    @Override
    public String key() {
        return "pedal_reserve";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        HardStop stop = facts.analysis().hardStop();
        if (stop == null) {
            return List.of();
        }
        double least = facts.aims().leastReserve();
        return List.of(Judged.as(state(stop.reserveShare(), least), this)
                .found(Figure.ratio(stop.reserveShare()))
                .against(Figure.ratio(least), whose(least), least < INSPECTION ? Tag.BUILDERS_CHOICE : Tag.SECONDARY)
                .with("reserve", Figure.length(stop.reserveM()))
                .with("travel", Figure.length(stop.point().pedalTravelM()))
                .with("travel_to_stop", Figure.length(facts.build().pedal().travelToStop()))
                .inputs("pedal.travel_to_stop", "pedal.ratio", "pedal.free_play")
                .finding());
    }

    private static String whose(double least) {
        return least < INSPECTION
                ? "aim, below the 20 % that an Australian inspection asks for under firm braking"
                : "aim; an Australian inspection asks for 20 % under firm braking";
    }

    private static State state(double share, double least) {
        if (share < 0) {
            return State.STOP;
        }
        return share < least ? State.CAUTION : State.FINE;
    }
}
