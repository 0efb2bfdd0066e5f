package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.chain.PanicPush;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.jspecify.annotations.Nullable;

/**
 * Pressure against the least rating of the parts in each circuit: a stop when the hard stop alone is beyond it, a caution
 * when a panic push is.
 */
public final class PartRating implements Rule {
    @Override
    public String key() {
        return "part_rating";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        PanicPush panic = facts.analysis().panicPush();
        double push = panic.pedalForceN();
        return List.of(
                side("front", push, panic.frontWorkingPa(), panic.frontPressurePa(), panic.frontRatingPa()),
                side("rear", push, panic.rearWorkingPa(), panic.rearPressurePa(), panic.rearRatingPa()));
    }

    private Finding side(
            String end, double push, @Nullable Double atHardStop, double pressure, @Nullable Double rating) {
        double working = atHardStop == null ? 0 : atHardStop;
        Judged judged = Judged.as(state(working, pressure, rating), this)
                .about(end)
                .found(Figure.pressure(pressure))
                .with("push", Figure.force(push))
                .with("working", Figure.pressure(working))
                .inputs(end + ".rated_pressure", "apply." + end + "_master.rated_pressure", "apply.rated_pressure");
        if (rating != null) {
            judged.against(Figure.pressure(rating), "least rating written down for this circuit", Tag.PART_SHEET);
        }
        return judged.finding();
    }

    private static State state(double working, double pressure, @Nullable Double rating) {
        if (rating == null) {
            return State.CANNOT_TELL;
        }
        if (working > rating) {
            return State.STOP;
        }
        return pressure > rating ? State.CAUTION : State.FINE;
    }
}
