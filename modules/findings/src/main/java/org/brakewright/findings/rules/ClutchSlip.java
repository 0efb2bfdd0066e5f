package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.quantity.Dimension;

/** What the clutch carries against the engine's torque. Silent without a clutch. */
public final class ClutchSlip implements Rule {

    @Override
    public String key() {
        return "clutch_slip";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ClutchState clutch = facts.analysis().clutch();
        return clutch == null ? List.of() : List.of(judged(facts, clutch));
    }

    private Finding judged(Facts facts, ClutchState clutch) {
        ClutchState.Torque torque = clutch.torque();
        Judged judged = judged(facts, torque)
                .with("torque", new Figure(torque.uniformWearNM(), Dimension.TORQUE))
                .with("torque_new", new Figure(torque.uniformPressureNM(), Dimension.TORQUE))
                .inputs(
                        "clutch.engine_torque",
                        "clutch.cover.clamp_load",
                        "clutch.plate.friction",
                        "clutch.cover.release_load",
                        "clutch.plate.faces");
        return judged.finding();
    }

    private Judged judged(Facts facts, ClutchState.Torque torque) {
        Double reserve = torque.reserve();
        Double engine = torque.engineNM();
        if (reserve == null || engine == null) {
            return Judged.as(State.CANNOT_TELL, this);
        }
        double least = facts.build().clutch().orElseThrow().limits().torqueReserve();
        return Judged.as(reserve < 1 ? State.STOP : reserve < least ? State.CAUTION : State.FINE, this)
                .found(Figure.ratio(reserve))
                .against(facts.aim(
                        "clutch.torque_reserve",
                        Figure.ratio(least),
                        "torque carried over engine torque, as asked for",
                        "aim assumed, since none is given"))
                .with("engine", new Figure(engine, Dimension.TORQUE));
    }
}
