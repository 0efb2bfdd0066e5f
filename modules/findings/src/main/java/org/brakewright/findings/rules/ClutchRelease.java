package org.brakewright.findings.rules;

import java.util.List;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.clutch.PlateState;
import org.brakewright.findings.Facts;
import org.brakewright.findings.Figure;
import org.brakewright.findings.Finding;
import org.brakewright.findings.Judged;
import org.brakewright.findings.Rule;
import org.brakewright.findings.State;
import org.brakewright.model.Tag;

/** Whether the clutch frees before the pedal ends, over the plate, new or worn, that lacks most. Silent without a clutch. */
public final class ClutchRelease implements Rule {
    /** Bearing travel beyond free that a warm, used release still has; an estimate. */
    private static final double SPARE = 0.5e-3;

    private static final double PAD_SPARE = ClutchState.Stop.PAD_BEYOND_FREE;

    /** A stop is not set closer than this. */
    private static final double ROUNDING = 1e-4;

    @Override
    public String key() {
        return "clutch_release";
    }

    @Override
    public List<Finding> judge(Facts facts) {
        ClutchState clutch = facts.analysis().clutch();
        return clutch == null ? List.of() : List.of(judged(clutch));
    }

    private Finding judged(ClutchState clutch) {
        PlateState plate = clutch.leastFree();
        double left = clutch.pedalEndM() - plate.freePadM();
        return Judged.as(state(plate, left), this)
                .saying(plate.spareM() < 0 && clutch.masterEnds() ? "master" : "")
                .found(Figure.length(plate.bearingTravelM()))
                .against(Figure.length(plate.neededM()), "bearing travel that frees the plate", Tag.DERIVED)
                .with("free_pad", Figure.length(plate.freePadM()))
                .with("pedal_end", Figure.length(clutch.pedalEndM()))
                .with("pad_left", Figure.length(left))
                .with("pad_spare", Figure.length(PAD_SPARE))
                .inputs(
                        "clutch.master.bore",
                        "clutch.pedal.travel_to_stop",
                        "clutch.cover.release_travel",
                        "clutch.slave.bore",
                        "clutch.slave.outer_diameter")
                .finding();
    }

    private static State state(PlateState plate, double left) {
        if (plate.spareM() < 0) {
            return State.STOP;
        }
        return plate.spareM() < SPARE || left < PAD_SPARE - ROUNDING ? State.CAUTION : State.FINE;
    }
}
