package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.TubeState;
import org.brakewright.analysis.lines.TubeState.Gap;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.lines.Nearness;

/** How near lines come to wheels, to what is hot and to what moves. */
public final class LineClearance implements Rule {
    private static final double WHEEL = 0.010;
    private static final double HOT = 0.075;
    private static final double MOVING = 0.010;

    /** A tube and the obstacle it comes nearest to. */
    private record Pair(TubeState tube, Gap gap) {}

    @Override
    public String key() {
        return "line_clearance";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        LinesState lines = facts.analysis().lines();
        return lines == null
                ? List.of()
                : Stream.of(Nearness.WHEEL, Nearness.HOT, Nearness.MOVING)
                        .flatMap(near -> nearest(lines, near).stream())
                        .map(pair ->
                                judged(pair, LinePaths.line(facts, pair.tube().name())))
                        .toList();
    }

    private static Optional<Pair> nearest(LinesState lines, Nearness near) {
        return lines.tubes().stream()
                .flatMap(tube ->
                        tube.gaps().stream().filter(gap -> gap.near() == near).map(gap -> new Pair(tube, gap)))
                .min(Comparator.comparingDouble(pair -> pair.gap().gapM()));
    }

    private Finding judged(Pair pair, String path) {
        Gap gap = pair.gap();
        boolean wheel = gap.near() == Nearness.WHEEL;
        double limit = limit(gap.near());
        State near = wheel ? State.STOP : State.CAUTION;
        return Judged.as(gap.gapM() < limit ? near : State.FINE, this)
                .about(pair.tube().name() + " beside " + gap.obstacle())
                .saying(gap.near().name().toLowerCase(Locale.ROOT))
                .found(Figure.length(gap.gapM()))
                .against(
                        Figure.length(limit),
                        wheel ? "NSW brake assessment manual 2013, p. 23, wheel or tyre" : "routing of lines",
                        wheel ? Tag.VERIFIED : Tag.COMMON_PRACTICE)
                .with("along", Figure.length(gap.alongM()))
                .inputs(path + ".points")
                .finding();
    }

    private static double limit(Nearness near) {
        return switch (near) {
            case WHEEL -> WHEEL;
            case HOT -> HOT;
            case MOVING -> MOVING;
            case FIXED -> 0;
        };
    }
}
