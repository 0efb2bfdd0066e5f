package org.brakewright.findings.rules;

import java.util.List;
import java.util.Optional;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.LoadState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.model.resolved.ResolvedMount.Measured;

/** Whether somebody has pushed on the pad and read how far it goes, and whether that agrees with what was computed. */
public final class MountProof implements Rule {
    /** Measured over computed movement beyond which something gives that was not told. */
    private static final double AGREES = 1.3;

    private static final String WHOSE = "computed, with a third for what a scale and a gauge at home cannot tell";

    @Override
    public String key() {
        return "mount_proof";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        MountState mount = facts.analysis().mount();
        if (mount == null) {
            return List.of();
        }
        LoadState use = mount.loads().getFirst();
        Optional<Measured> measured = facts.build().mount().orElseThrow().measured();
        return List.of(measured.map(read -> read(read, use)).orElseGet(() -> unread(use)));
    }

    private Finding unread(LoadState use) {
        return Judged.as(State.CANNOT_TELL, this)
                .with("foot", Figure.force(use.footN()))
                .with("pad", Figure.length(use.padM()))
                .with("flange", Figure.length(Math.abs(use.flangeM())))
                .inputs("mount.measured")
                .finding();
    }

    private Finding read(Measured read, LoadState use) {
        double pad = use.padM() / use.footN() * read.force();
        return Judged.as(read.pad() > AGREES * pad ? State.CAUTION : State.FINE, this)
                .found(Figure.length(read.pad()))
                .against(Figure.length(AGREES * pad), WHOSE, Tag.COMMON_PRACTICE)
                .with("foot", Figure.force(read.force()))
                .with("pad", Figure.length(pad))
                .inputs("mount.measured.pad", "mount.panel.edges")
                .finding();
    }
}
