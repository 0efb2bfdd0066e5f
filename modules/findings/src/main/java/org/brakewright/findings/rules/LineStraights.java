package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.analysis.lines.TubeState.ShortStraight;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Whether every straight is long enough for the bender to grip and the nut to slide. */
public final class LineStraights implements Rule {
    @Override
    public String key() {
        return "line_straights";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        LinesState lines = facts.analysis().lines();
        if (lines == null) {
            return List.of();
        }
        List<Finding> findings = lines.tubes().stream()
                .flatMap(tube -> tube.straights().stream()
                        .min(Comparator.comparingDouble(straight -> straight.haveM() - straight.needM()))
                        .map(straight -> tooShort(facts, tube, straight))
                        .stream())
                .toList();
        return findings.isEmpty()
                ? List.of(Judged.as(State.FINE, this).inputs("plumbing.bender").finding())
                : findings;
    }

    private Finding tooShort(Facts facts, TubeState tube, ShortStraight straight) {
        return Judged.as(State.STOP, this)
                .about(tube.name())
                .saying(straight.forNut() ? "nut" : "")
                .found(Figure.length(straight.haveM()))
                .against(
                        Figure.length(straight.needM()),
                        straight.forNut() ? "room for nut and clamp" : "what the bender needs",
                        Tag.BUILDERS_CHOICE)
                .with("number", Figure.ratio(straight.number()))
                .inputs(LinePaths.line(facts, tube.name()) + ".points", "plumbing.bender")
                .finding();
    }
}
