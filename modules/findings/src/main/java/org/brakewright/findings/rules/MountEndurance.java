package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.EnduranceState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedMount.Loads;

/** Whether a crack may start within the life asked for. */
public final class MountEndurance implements Rule {
    /** Share of the asked life below which nobody would notice in time. */
    private static final double SOON = 0.1;

    /** More lives than this say nothing more. */
    private static final double LIVES = 1000;

    private static final String WHOSE = "the stops asked for; curves of EN 1993-1-9 and of the welding institute";

    @Override
    public String key() {
        return "mount_endurance";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        MountState mount = facts.analysis().mount();
        return mount == null
                ? List.of()
                : mount.endurance().stream()
                        .findFirst()
                        .map(first -> judged(
                                first, facts.build().mount().orElseThrow().loads()))
                        .stream()
                        .toList();
    }

    private Finding judged(EnduranceState first, Loads loads) {
        double share = first.stops() / loads.stops();
        State state = share < SOON ? State.STOP : share < 1 ? State.CAUTION : State.CANNOT_TELL;
        return Judged.as(state, this)
                .about(first.name())
                .found(Figure.ratio(Math.min(first.stops(), LIVES * loads.stops())))
                .against(Figure.ratio(loads.stops()), WHOSE, Tag.FROM_MEMORY)
                .with("times", Figure.ratio(Math.min(share, LIVES)))
                .with("foot", Figure.force(loads.stopForce()))
                .inputs(first.path(), "mount.loads.stops", "mount.loads.stop_force")
                .finding();
    }
}
