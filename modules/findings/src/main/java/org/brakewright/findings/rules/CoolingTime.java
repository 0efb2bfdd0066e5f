package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.heat.HeatState;
import org.brakewright.analysis.heat.ScheduleHeat;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;
import org.brakewright.quantity.Dimension;

/** How long the hottest brakes must be driven on gently before they are cold again. */
public final class CoolingTime implements Rule {
    /** An estimate: longer than that nobody drives on gently. */
    private static final double LONG = 900;

    /** Beyond it nobody looked. */
    private static final double LOOKED = 7200;

    @Override
    public String key() {
        return "cooling_time";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        HeatState heat = facts.analysis().heat();
        if (heat == null || heat.schedules().isEmpty()) {
            return List.of();
        }
        double longest =
                heat.schedules().stream().mapToDouble(CoolingTime::time).max().orElseThrow();
        return List.of(Judged.as(longest > LONG ? State.CAUTION : State.FINE, this)
                .found(new Figure(longest, Dimension.TIME))
                .against(new Figure(LONG, Dimension.TIME), "what a driver has patience for", Tag.ESTIMATE)
                .with("speed", Figure.speed(facts.build().heat().orElseThrow().onwardSpeed()))
                .inputs("heat.front.airflow", "heat.rear.airflow", "heat.onward_speed")
                .finding());
    }

    private static double time(ScheduleHeat schedule) {
        Double time = schedule.coolingTimeS();
        return time == null ? LOOKED : time;
    }
}
