package org.brakewright.findings.rules;

import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.PartState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedMount.Loads;

/** Whether sheet, bars and arm stand the foot: without lasting set when it pushes hard, without breaking when it panics. */
public final class MountStress implements Rule {
    private static final String EMERGENCY = "2,000 N of competition rules, 2,250 N of pedal-box checks, or your own";
    private static final String NO_SET = "the force asked for without lasting set; pedal-box checks use 1,250 N";

    @Override
    public String key() {
        return "mount_stress";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        MountState mount = facts.analysis().mount();
        if (mount == null) {
            return List.of();
        }
        Loads loads = facts.build().mount().orElseThrow().loads();
        Comparator<PartState> weakest = Comparator.comparingDouble(
                part -> Math.min(part.breaksAtN() / loads.strength(), part.yieldsAtN() / loads.stiffness()));
        return mount.parts().stream().min(weakest).map(part -> judged(part, loads)).stream()
                .toList();
    }

    private Finding judged(PartState part, Loads loads) {
        boolean breaks = part.breaksAtN() < loads.strength();
        State state = breaks ? State.STOP : part.yieldsAtN() < loads.stiffness() ? State.CAUTION : State.FINE;
        return Judged.as(state, this)
                .about(part.name())
                .found(Figure.force(breaks ? part.breaksAtN() : part.yieldsAtN()))
                .against(
                        Figure.force(breaks ? loads.strength() : loads.stiffness()),
                        breaks ? EMERGENCY : NO_SET,
                        Tag.SECONDARY)
                .inputs(part.path(), "mount.loads.strength", "mount.loads.stiffness")
                .finding();
    }
}
