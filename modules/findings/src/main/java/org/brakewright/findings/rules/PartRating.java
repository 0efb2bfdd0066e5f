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

/** Pressure of a panic push against the least rating of the parts in each circuit. */
public final class PartRating implements Rule {
    private static final double CLOSE = 0.9;

    @Override
    public String key() {
        return "part_rating";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        PanicPush panic = facts.analysis().panicPush();
        return List.of(
                side("front", panic.pedalForceN(), panic.frontPressurePa(), panic.frontRatingPa()),
                side("rear", panic.pedalForceN(), panic.rearPressurePa(), panic.rearRatingPa()));
    }

    private Finding side(String end, double push, double pressure, @Nullable Double rating) {
        Judged judged = Judged.as(state(pressure, rating), this)
                .about(end)
                .found(Figure.pressure(pressure))
                .with("push", Figure.force(push))
                .inputs(end + ".rated_pressure", "apply." + end + "_master.rated_pressure", "apply.rated_pressure");
        if (rating != null) {
            judged.against(Figure.pressure(rating), "rating on the part sheet", Tag.BUILDERS_CHOICE);
        }
        return judged.finding();
    }

    private static State state(double pressure, @Nullable Double rating) {
        if (rating == null) {
            return State.CANNOT_TELL;
        }
        if (pressure > rating) {
            return State.STOP;
        }
        return pressure > CLOSE * rating ? State.CAUTION : State.FINE;
    }
}
