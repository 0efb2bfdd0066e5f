package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.analysis.lines.TubeState.Strength;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** How many times the highest pressure the weakest tube holds. */
public final class LineBurst implements Rule {
    private static final double LEAST = 2;
    private static final double WANTED = 4;

    @Override
    public String key() {
        return "line_burst";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        LinesState lines = facts.analysis().lines();
        return lines == null
                ? List.of()
                : lines.tubes().stream()
                        .min(Comparator.comparingDouble(tube -> times(tube.strength())))
                        .map(tube -> judged(tube, LinePaths.line(facts, tube.name())))
                        .stream()
                        .toList();
    }

    private Finding judged(TubeState tube, String path) {
        Strength strength = tube.strength();
        double times = times(strength);
        State state = times < LEAST ? State.STOP : times < WANTED ? State.CAUTION : State.FINE;
        Judged judged = Judged.as(state, this)
                .about(tube.name())
                .found(Figure.ratio(times))
                .with("burst", Figure.pressure(strength.burstPa()))
                .with("highest", Figure.pressure(strength.highestPa()))
                .inputs(path + ".wall", path + ".material", path + ".outside_diameter");
        return (state == State.STOP
                        ? judged.against(
                                Figure.ratio(LEAST),
                                "competition rules for hydraulic lines, burst double",
                                Tag.FROM_MEMORY)
                        : judged.against(
                                Figure.ratio(WANTED), "hydraulic tube, a factor of 4 on burst", Tag.COMMON_PRACTICE))
                .finding();
    }

    private static double times(Strength strength) {
        return strength.burstPa() / strength.highestPa();
    }
}
