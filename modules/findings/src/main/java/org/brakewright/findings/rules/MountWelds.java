package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.WeldState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedMount.Loads;

/** Whether the welds that hold brackets to the panel carry the foot. */
public final class MountWelds implements Rule {
    private static final String WHOSE =
            "working stress of fillet welds, Shigley's Mechanical Engineering Design, table 9-4";

    @Override
    public String key() {
        return "mount_welds";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        MountState mount = facts.analysis().mount();
        return mount == null
                ? List.of()
                : mount.welds().stream()
                        .min(Comparator.comparingDouble(WeldState::holdsToN))
                        .map(weld ->
                                judged(weld, facts.build().mount().orElseThrow().loads()))
                        .stream()
                        .toList();
    }

    private Finding judged(WeldState weld, Loads loads) {
        State state = weld.holdsToN() < loads.function()
                ? State.STOP
                : weld.holdsToN() < loads.stiffness() ? State.CAUTION : State.CANNOT_TELL;
        return Judged.as(state, this)
                .about(weld.name())
                .found(Figure.force(weld.holdsToN()))
                .against(
                        Figure.force(state == State.STOP ? loads.function() : loads.stiffness()),
                        WHOSE,
                        Tag.FROM_MEMORY)
                .inputs(weld.path() + ".leg", "mount.loads.stiffness")
                .finding();
    }
}
