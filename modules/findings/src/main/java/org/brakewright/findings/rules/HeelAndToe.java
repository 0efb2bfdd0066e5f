package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.footwell.FootwellState.HeelToeState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Whether one foot can brake hard and blip the throttle. */
public final class HeelAndToe implements Rule {
    private static final String WHOSE = "20 mm of each pad under the shoe; the ankle turns 15 degrees out and 35 in";

    @Override
    public String key() {
        return "heel_and_toe";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        FootwellState footwell = facts.analysis().footwell();
        boolean wanted = facts.build().footwell().map(told -> told.heelAndToe()).orElse(false);
        if (footwell == null || footwell.heelToe() == null || !wanted) {
            return List.of();
        }
        return List.of(judged(footwell.heelToe(), footwell.shoeM()));
    }

    private Finding judged(HeelToeState heelToe, double shoe) {
        State state = heelToe.works() ? State.CANNOT_TELL : State.CAUTION;
        if (heelToe.asideM() > 0) {
            return Judged.as(state, this)
                    .saying("aside")
                    .found(Figure.length(shoe))
                    .against(Figure.length(heelToe.needsM()), WHOSE, Tag.COMMON_PRACTICE)
                    .with("shift", Figure.length(heelToe.asideM()))
                    .inputs("footwell.throttle.pad", "footwell.shoe")
                    .finding();
        }
        boolean deep = heelToe.forwardM() < 0;
        return Judged.as(state, this)
                .saying(heelToe.works() ? "" : deep ? "deep" : "high")
                .found(Figure.length(heelToe.stepM()))
                .against(Figure.length(deep ? heelToe.lowestM() : heelToe.highestM()), WHOSE, Tag.FROM_MEMORY)
                .with("shift", Figure.length(Math.abs(heelToe.forwardM())))
                .inputs("footwell.throttle.pad", "pedal.travel_to_stop")
                .finding();
    }
}
