package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.footwell.FootwellState.SpacingState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Whether the pads stand as far apart as the published rule for cars wants them. */
public final class PedalSpacing implements Rule {
    private static final String WHOSE = "UN R35, as a national rule reproduces it";

    @Override
    public String key() {
        return "pedal_spacing";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        FootwellState footwell = facts.analysis().footwell();
        if (footwell == null) {
            return List.of();
        }
        List<Finding> unmet = footwell.spacing().stream()
                .filter(spacing -> !spacing.met())
                .map(this::unmet)
                .toList();
        return unmet.isEmpty()
                ? List.of(Judged.as(State.FINE, this).inputs("footwell").finding())
                : unmet;
    }

    private Finding unmet(SpacingState spacing) {
        Double most = spacing.mostM();
        boolean wide = spacing.foundM() >= spacing.leastM();
        double limit = most != null && wide ? most : spacing.leastM();
        return Judged.as(State.CAUTION, this)
                .about(words(spacing))
                .saying(wide ? "wide" : "")
                .found(Figure.length(spacing.foundM()))
                .against(Figure.length(limit), WHOSE, Tag.SECONDARY)
                .inputs("footwell")
                .finding();
    }

    private static String words(SpacingState spacing) {
        return switch (spacing.letter()) {
            case E -> "throttle and brake (E)";
            case F -> "brake and clutch (F)";
            case G -> "clutch and the wall on its left (G)";
            case H -> "brake and the wall on its right (H)";
            case J -> "brake and the wall on its left (J)";
        };
    }
}
