package org.brakewright.findings.rules;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.heat.HotBrakes;
import org.brakewright.analysis.heat.HotLoadCase;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.jspecify.annotations.Nullable;

/** Who locks first with the brakes as hot as they get: an axle that fades more hands its work to the other. */
public final class HotBalance implements Rule {
    @Override
    public String key() {
        return "hot_balance";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        HeatState heat = facts.analysis().heat();
        HotBrakes hot = heat == null ? null : heat.hot();
        return hot == null ? List.of() : List.of(judge(facts, hot));
    }

    private Finding judge(Facts facts, HotBrakes hot) {
        double grip = facts.analysis().grip();
        double hotG = least(hot.loadCases().stream().map(HotLoadCase::criticalDecelerationG));
        double coldG = least(facts.analysis().loadCases().stream().map(LoadCaseResult::criticalDecelerationG));
        if (hotG >= grip) {
            return begun(State.FINE, hot)
                    .against(Figure.g(grip), "tyre grip", Tag.DERIVED)
                    .finding();
        }
        State state = coldG < grip ? State.CAUTION : State.STOP;
        return begun(state, hot)
                .found(Figure.g(hotG))
                .against(Figure.g(grip), "tyre grip", Tag.DERIVED)
                .finding();
    }

    private static double least(Stream<@Nullable Double> critical) {
        return critical.filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private Judged begun(State state, HotBrakes hot) {
        return Judged.as(state, this)
                .with("share", Figure.ratio(hot.frontShare()))
                .with("front_left", Figure.ratio(hot.frontForceShare()))
                .with("rear_left", Figure.ratio(hot.rearForceShare()))
                .inputs("heat.front.friction_curve", "heat.rear.friction_curve");
    }
}
