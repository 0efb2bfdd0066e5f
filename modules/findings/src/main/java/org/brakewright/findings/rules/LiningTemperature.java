package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.heat.AxleHeat;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;

/** The skin of each lining, which is as hot as the rotor it rubs on, against the most that the lining stands. */
public final class LiningTemperature implements Rule {
    @Override
    public String key() {
        return "lining_temperature";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        return HotAxle.worst(facts, AxleHeat::rotorPeakK).stream()
                .map(axle -> judge(facts, axle))
                .toList();
    }

    private Finding judge(Facts facts, HotAxle axle) {
        double limit = axle.brake().lining().limit();
        boolean over = axle.heat().rotorPeakK() > limit;
        return Judged.as(over ? State.CAUTION : State.FINE, this)
                .about(axle.subject())
                .found(Figure.temperature(axle.heat().rotorPeakK()))
                .against(Figure.temperature(limit), "most that the lining is to stand", axle.tag(facts, "lining_limit"))
                .with("mean", Figure.temperature(axle.heat().liningPeakK()))
                .inputs(axle.path("lining_limit"), axle.path("rotor_mass"), axle.path("airflow"))
                .finding();
    }
}
