package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.mount.MountState;
import org.brakewright.analysis.mount.MountState.LoadState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.quantity.Dimension;

/** How far the pedal goes with the fluid held fast. */
public final class MountMovement implements Rule {
    /** Foot force at which pedals are checked, N. */
    private static final double FOOT = 500;

    /** Movement of the pad, m. */
    private static final double PAD = 5e-3;

    /** Movement of the pad by panel and cowl alone over the foot's force, m/N. */
    private static final double PANEL = 0.005e-3;

    private static final String MAKERS = "vehicle makers' checks of pedals";

    @Override
    public String key() {
        return "mount_movement";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        MountState mount = facts.analysis().mount();
        return mount == null ? List.of() : List.of(judged(mount.loads().getFirst()));
    }

    private Finding judged(LoadState use) {
        double pad = use.padM() / use.footN() * FOOT;
        double panel = (use.padM() - use.armM()) / use.footN();
        State state = pad > PAD ? State.STOP : panel > PANEL ? State.CAUTION : State.FINE;
        Judged judged = Judged.as(state, this)
                .with("foot", Figure.force(FOOT))
                .with("arm", Figure.length(use.armM() / use.footN() * FOOT))
                .with("panel", Figure.length(panel * FOOT))
                .inputs("mount.panel.thickness", "mount.stringers", "mount.doublers");
        return (state == State.CAUTION
                        ? judged.found(stiffness(1 / panel)).against(stiffness(1 / PANEL), MAKERS, Tag.SECONDARY)
                        : judged.found(Figure.length(pad)).against(Figure.length(PAD), MAKERS, Tag.SECONDARY))
                .finding();
    }

    private static Figure stiffness(double value) {
        return new Figure(value, Dimension.STIFFNESS);
    }
}
