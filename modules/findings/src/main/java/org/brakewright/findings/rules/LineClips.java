package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.analysis.lines.TubeState.Clips;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** How far a tube runs without being held. */
public final class LineClips implements Rule {
    private static final double MOST = 0.3;

    /** What rounding adds to a way between two clips, m. */
    private static final double ROUNDING = 1e-9;

    @Override
    public String key() {
        return "line_clips";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        LinesState lines = facts.analysis().lines();
        return lines == null
                ? List.of()
                : lines.tubes().stream()
                        .max(Comparator.comparingDouble(LineClips::longest))
                        .map(tube -> judged(tube, LinePaths.line(facts, tube.name())))
                        .stream()
                        .toList();
    }

    /** Without clips told, a tube longer than the limit has to be asked about first. */
    private static double longest(TubeState tube) {
        Clips clips = tube.clips();
        return clips != null ? clips.longestM() : tube.developedM() > MOST ? Double.MAX_VALUE : tube.developedM();
    }

    private Finding judged(TubeState tube, String path) {
        double longest = longest(tube);
        boolean told = longest < Double.MAX_VALUE;
        State state = !told ? State.CANNOT_TELL : longest > MOST + ROUNDING ? State.CAUTION : State.FINE;
        Judged judged = Judged.as(state, this)
                .about(tube.name())
                .found(Figure.length(told ? longest : tube.developedM()))
                .against(Figure.length(MOST), "NSW brake assessment manual 2013, p. 23, supports", Tag.VERIFIED)
                .inputs(path + ".clips");
        return judged.finding();
    }
}
