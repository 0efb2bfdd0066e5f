package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.pedal.PushrodState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.jspecify.annotations.Nullable;

/** How far a pushrod can be screwed into its clevis, and whether clevis and piston leave room for a rod at all. */
public final class RodThread implements Rule {
    private static final double LEAST = 1.0;
    private static final double WANTED = 1.5;

    @Override
    public String key() {
        return "rod_thread";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ClutchState clutch = facts.analysis().clutch();
        List<Finding> findings = new ArrayList<>();
        add(findings, "brake", "pedal", facts.analysis().pedal().pushrods());
        add(findings, "clutch", "clutch.pedal", clutch == null ? null : clutch.pushrod());
        return List.copyOf(findings);
    }

    private void add(List<Finding> findings, String pedal, String path, @Nullable PushrodState rods) {
        if (rods != null) {
            Judged judged = rods.cutM() <= rods.threadM() ? tooShort(rods, path) : engagement(rods, path);
            findings.add(judged.about(pedal).finding());
        }
    }

    private Judged tooShort(PushrodState rods, String path) {
        return Judged.as(State.STOP, this)
                .saying("short")
                .found(Figure.length(rods.cutM()))
                .against(Figure.length(rods.threadM()), "the thread alone is longer than the rod", Tag.DERIVED)
                .inputs(path + ".pushrod.clevis_length", path + ".mechanism.socket_forward");
    }

    private Judged engagement(PushrodState rods, String path) {
        double found = rods.mostEngagement();
        State state = found < LEAST ? State.STOP : found < WANTED ? State.CAUTION : State.FINE;
        return Judged.as(state, this)
                .found(Figure.ratio(found))
                .against(
                        Figure.ratio(state == State.STOP ? LEAST : WANTED),
                        "thread engagement in steel, 1 to 1.5 diameters",
                        Tag.COMMON_PRACTICE)
                .inputs(path + ".pushrod.clevis_thread", path + ".pushrod.thread_diameter");
    }
}
