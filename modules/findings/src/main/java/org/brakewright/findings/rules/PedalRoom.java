package org.brakewright.findings.rules;

import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.footwell.FootwellState.SweepState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Whether the pedals keep clear of what stands round them, over their whole travel. */
public final class PedalRoom implements Rule {
    /** Room over the whole travel, m. */
    private static final double ROOM = 10e-3;

    @Override
    public String key() {
        return "pedal_room";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        FootwellState footwell = facts.analysis().footwell();
        return footwell == null
                ? List.of()
                : footwell.sweeps().stream().limit(1).map(this::judged).toList();
    }

    private Finding judged(SweepState sweep) {
        State state = sweep.gapM() <= 0 ? State.STOP : sweep.gapM() < ROOM ? State.CAUTION : State.FINE;
        String pedal = sweep.which().name().toLowerCase(Locale.ROOT);
        Double shift = sweep.shiftM();
        Judged judged = Judged.as(state, this)
                .about(pedal + " pedal and " + sweep.obstacle())
                .saying(shift == null ? "" : shift > 0 ? "left" : "right")
                .found(Figure.length(Math.max(0, sweep.gapM())))
                .against(Figure.length(ROOM), "room round a pedal over its whole travel", Tag.COMMON_PRACTICE)
                .with("travel", Figure.length(sweep.travelM()))
                .inputs("footwell." + pedal, "footwell.obstacles");
        return (shift == null ? judged : judged.with("shift", Figure.length(Math.abs(shift)))).finding();
    }
}
