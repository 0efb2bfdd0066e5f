package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.heat.AxleHeat;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/** The rubbed face of each disc or drum against the most that its iron stands. */
public final class RotorTemperature implements Rule {
    /** Beyond it iron changes its structure and no number of this tool holds, K (from memory). */
    private static final double HOTTEST = 973.15;

    @Override
    public String key() {
        return "rotor_temperature";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        return HotAxle.worst(facts, AxleHeat::facePeakK).stream()
                .map(axle -> judge(facts, axle))
                .toList();
    }

    private Finding judge(Facts facts, HotAxle axle) {
        double limit = axle.brake().rotor().limit();
        return Judged.as(state(axle, limit), this)
                .about(axle.subject())
                .found(Figure.temperature(axle.heat().facePeakK()))
                .against(Figure.temperature(limit), "most that the iron is to stand", axle.tag(facts, "rotor_limit"))
                .with("mean", Figure.temperature(axle.heat().rotorPeakK()))
                .inputs(axle.path("rotor_mass"), axle.path("airflow"), axle.path("rotor_limit"))
                .finding();
    }

    private static State state(HotAxle axle, double limit) {
        if (axle.heat().rotorPeakK() > HOTTEST) {
            return State.STOP;
        }
        return axle.heat().facePeakK() > limit ? State.CAUTION : State.FINE;
    }
}
