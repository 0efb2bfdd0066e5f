package org.brakewright.findings.rules;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedApply.Valves;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.vehicle.AxleEnd;

/** Whether valves sit where they can do their work (common practice, no source). Silent on a car without valves. */
public final class ValvePlacement implements Rule {
    @Override
    public String key() {
        return "valve_placement";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        Valves valves = facts.build().apply().valves();
        List<Finding> findings = new ArrayList<>();
        valves.proportioning()
                .ifPresent(valve ->
                        findings.add(valve(facts, valve, "proportioning valve", "apply.proportioning_valve.line")));
        valves.second()
                .ifPresent(valve -> findings.add(
                        second(facts, valve, "second proportioning valve", "apply.second_proportioning_valve.line")));
        valves.metering().ifPresent(valve -> findings.add(metering(facts)));
        return List.copyOf(findings);
    }

    private Finding second(Facts facts, Valve valve, String what, String path) {
        boolean series = valve.line() == AxleEnd.REAR
                && facts.build()
                        .apply()
                        .valve()
                        .map(first -> first.line() == AxleEnd.REAR)
                        .orElse(false);
        return series ? series(facts, what) : valve(facts, valve, what, path);
    }

    private Finding series(Facts facts, String what) {
        HardStop stop = facts.analysis().hardStop();
        Judged judged = Judged.as(State.CAUTION, this).about(what).saying(stop == null ? "series" : "series_at_stop");
        if (stop != null) {
            judged.with("front", Figure.pressure(stop.point().frontPressurePa()))
                    .with("rear", Figure.pressure(stop.point().rearPressurePa()));
        }
        return judged.inputs("apply.proportioning_valve", "apply.second_proportioning_valve")
                .finding();
    }

    private Finding valve(Facts facts, Valve valve, String what, String path) {
        if (valve.line() == AxleEnd.FRONT) {
            return placed(State.STOP, what, "front", path);
        }
        return facts.build().apply().diagonal()
                ? placed(State.CAUTION, what, "diagonal", "apply.split")
                : placed(State.FINE, what, "", path);
    }

    private Finding metering(Facts facts) {
        boolean waits = facts.build().rear() instanceof ResolvedBrake.Drum;
        return placed(waits ? State.FINE : State.CAUTION, "metering valve", "metering", "apply.metering_valve");
    }

    private Finding placed(State state, String what, String variant, String path) {
        return Judged.as(state, this).about(what).saying(variant).inputs(path).finding();
    }
}
