package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.LinesState.AirKind;
import org.brakewright.analysis.lines.LinesState.AirTrap;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/** Whether air can leave the lines. */
public final class LineAir implements Rule {
    @Override
    public String key() {
        return "line_air";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        LinesState lines = facts.analysis().lines();
        if (lines == null) {
            return List.of();
        }
        return lines.air().isEmpty()
                ? List.of(Judged.as(State.FINE, this).inputs("plumbing.tubes").finding())
                : lines.air().stream()
                        .map(trap -> judged(facts, trap))
                        .distinct()
                        .toList();
    }

    private Finding judged(Facts facts, AirTrap trap) {
        return Judged.as(trap.kind() == AirKind.CLOSED_END ? State.STOP : State.CAUTION, this)
                .about(trap.where())
                .found(Figure.length(trap.riseM()))
                .with("up", Figure.length(trap.at().z()))
                .inputs(LinePaths.any(facts, trap.where()))
                .finding();
    }
}
