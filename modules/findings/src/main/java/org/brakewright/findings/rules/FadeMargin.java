package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.heat.AxleHeat;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.heat.HotBrakes;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Limit;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** What the hottest brakes leave of the hard stop: by the friction curve, at the same push, and the push it then takes. */
public final class FadeMargin implements Rule {
    /** Share of the cold deceleration that must be left at the same push. */
    private static final Limit LEAST =
            new Limit(Figure.ratio(0.60), "UN R13-H Annex 3 and FMVSS 135 S7.14, hot performance", Tag.FROM_MEMORY);

    /** Heat that makes the push no dearer than this is not to blame for it. */
    private static final double NO_DEARER = 1.01;

    @Override
    public String key() {
        return "fade_margin";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        HeatState heat = facts.analysis().heat();
        HotBrakes hot = heat == null ? null : heat.hot();
        return hot == null ? List.of() : List.of(judge(facts, hot));
    }

    private Finding judge(Facts facts, HotBrakes hot) {
        Double effort = hot.effortN();
        if (effort == null || effort > facts.aims().panicPush()) {
            return begun(State.STOP, hot)
                    .saying("none")
                    .against(Figure.force(facts.aims().panicPush()), "what a leg gives at all", Tag.COMMON_PRACTICE)
                    .finding();
        }
        if (hot.decelerationShare() < LEAST.figure().value()) {
            return begun(State.STOP, hot)
                    .found(Figure.ratio(hot.decelerationShare()))
                    .against(LEAST)
                    .with("effort", Figure.force(effort))
                    .finding();
        }
        if (effort < NO_DEARER * hot.coldEffortN() && !beyondCurve(facts)) {
            return begun(State.FINE, hot)
                    .saying("as_cold")
                    .found(Figure.force(effort))
                    .finding();
        }
        boolean over = effort > facts.aims().mostEffort();
        boolean beyond = beyondCurve(facts);
        return begun(over || beyond ? State.CAUTION : State.FINE, hot)
                .saying(beyond ? "beyond" : "")
                .found(Figure.force(effort))
                .against(facts.aim("most_effort", Figure.force(facts.aims().mostEffort())))
                .finding();
    }

    private static boolean beyondCurve(Facts facts) {
        return HotAxle.worst(facts, AxleHeat::rotorPeakK).stream()
                .anyMatch(axle -> axle.heat().beyondCurve());
    }

    private Judged begun(State state, HotBrakes hot) {
        return Judged.as(state, this)
                .with("cold", Figure.force(hot.coldEffortN()))
                .with("left", Figure.ratio(hot.decelerationShare()))
                .with("front", Figure.temperature(hot.frontRotorK()))
                .with("rear", Figure.temperature(hot.rearRotorK()))
                .inputs("heat.front.friction_curve", "heat.front.rotor_mass", "front.pad_friction_hot");
    }
}
