package org.brakewright.findings.rules;

import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.footwell.FootwellState.GapState;
import org.brakewright.analysis.footwell.FootwellState.Which;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Whether a foot in the middle of one pad presses its neighbour too. */
public final class FootOnTwoPedals implements Rule {
    /** How much further away than the pressed pad a neighbour is out of the way, m. */
    private static final double DEEPER = 10e-3;

    @Override
    public String key() {
        return "foot_on_two_pedals";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        FootwellState footwell = facts.analysis().footwell();
        return footwell == null
                ? List.of()
                : footwell.gaps().stream()
                        .map(gap -> judged(gap, footwell.shoeM()))
                        .toList();
    }

    /** The braking foot against its right neighbour at the hard stop, else at rest. */
    private Finding judged(GapState gap, double shoe) {
        Double working = gap.stepWorkingM();
        double step = working == null || gap.left() != Which.BRAKE ? gap.stepAtRestM() : working;
        boolean deeper = gap.left() == Which.BRAKE ? step < -DEEPER : Math.abs(step) > DEEPER;
        boolean catches = gap.overhangM() > gap.gapM() && !deeper;
        String left = gap.left().name().toLowerCase(Locale.ROOT);
        String right = gap.right().name().toLowerCase(Locale.ROOT);
        return Judged.as(catches ? State.CAUTION : State.FINE, this)
                .about(left + " and " + right)
                .found(Figure.length(gap.overhangM()))
                .against(Figure.length(gap.gapM()), "the gap between the pads", Tag.DERIVED)
                .with("shoe", Figure.length(shoe))
                .with("shift", Figure.length(Math.max(0, gap.overhangM() - gap.gapM())))
                .inputs("footwell." + left, "footwell." + right, "footwell.shoe")
                .finding();
    }
}
