package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.analysis.lines.LinesState;
import org.brakewright.analysis.lines.LinesState.JointState;
import org.brakewright.analysis.lines.Misfit;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/** Whether the end of every tube and hose mates with the port it goes into. */
public final class LineJoint implements Rule {
    @Override
    public String key() {
        return "line_joint";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        LinesState lines = facts.analysis().lines();
        if (lines == null) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        for (JointState joint : lines.joints()) {
            if (!joint.misfits().isEmpty()) {
                findings.add(wrong(facts, joint));
            }
        }
        return findings.isEmpty()
                ? List.of(Judged.as(State.FINE, this).inputs("plumbing.tubes").finding())
                : List.copyOf(findings);
    }

    /** The first reason is told; a thick wall alone is no wrong pair, but outside what standard flares are made of. */
    private Finding wrong(Facts facts, JointState joint) {
        Misfit misfit = joint.misfits().getFirst();
        String end = joint.atStart() ? ".start" : ".end";
        return Judged.as(misfit == Misfit.WALL ? State.CAUTION : State.STOP, this)
                .about(joint.line() + " at " + joint.part())
                .saying(misfit == Misfit.WALL ? "" : misfit.name().toLowerCase(Locale.ROOT))
                .inputs(LinePaths.line(facts, joint.line()) + end)
                .finding();
    }
}
