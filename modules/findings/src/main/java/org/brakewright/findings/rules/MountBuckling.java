package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.ColumnState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedMount.Loads;

/** Whether a pressed brace stays straight. */
public final class MountBuckling implements Rule {
    /** Times the emergency load; a column off true bows earlier than Euler says. */
    private static final double WANTED = 2;

    @Override
    public String key() {
        return "mount_buckling";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        MountState mount = facts.analysis().mount();
        return mount == null
                ? List.of()
                : mount.columns().stream()
                        .min(Comparator.comparingDouble(ColumnState::failsAtN))
                        .map(column -> judged(
                                column, facts.build().mount().orElseThrow().loads()))
                        .stream()
                        .toList();
    }

    private Finding judged(ColumnState column, Loads loads) {
        double times = column.failsAtN() / loads.strength();
        State state = times < 1 ? State.STOP : times < WANTED ? State.CAUTION : State.FINE;
        Judged judged = Judged.as(state, this)
                .about(column.name())
                .found(Figure.force(column.failsAtN()))
                .with("press", Figure.force(column.pressN()))
                .with("fails", Figure.force(column.failsN()))
                .inputs(column.path() + ".profile", "mount.loads.strength");
        return (state == State.STOP
                        ? judged.against(
                                Figure.force(loads.strength()), "the force asked for in an emergency", Tag.SECONDARY)
                        : judged.against(
                                Figure.force(WANTED * loads.strength()),
                                "twice the emergency force, since no brace is quite straight",
                                Tag.COMMON_PRACTICE))
                .finding();
    }
}
