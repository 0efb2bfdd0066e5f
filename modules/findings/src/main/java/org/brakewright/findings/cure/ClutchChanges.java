package org.brakewright.findings.cure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.setting.StockBores;
import org.brakewright.findings.cure.Change.Kind;
import org.brakewright.model.Build;
import org.brakewright.model.resolved.ResolvedClutch;
import org.jspecify.annotations.Nullable;

/** Every single change that is offered for a clutch, least work first and smallest first within a kind. */
final class ClutchChanges {
    private static final int[] BORE_STEPS = {1, -1, 2, -2, 3, -3};
    private static final double[] RATIO_STEPS = {0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1.0, -1.0, 1.5, -1.5};
    private static final double LEAST_RATIO = 3;
    private static final double MOST_RATIO = 8;

    private ClutchChanges() {}

    static List<Change> of(Build build, @Nullable ResolvedClutch clutch, @Nullable ClutchState state) {
        if (build.clutch() == null || clutch == null || state == null) {
            return List.of();
        }
        List<Change> changes = new ArrayList<>();
        Double stop = state.stop().bestM();
        if (stop != null) {
            changes.add(new Change(Kind.CLUTCH_STOP, Map.of("clutch.pedal.travel_to_stop", stop), stop));
        }
        for (int steps : BORE_STEPS) {
            double bore = StockBores.master(clutch.master().bore(), steps);
            if (!Double.isNaN(bore)) {
                changes.add(new Change(Kind.CLUTCH_BORE, Map.of("clutch.master.bore", bore), steps));
            }
        }
        double ratio = clutch.pedal().ratio();
        for (double step : RATIO_STEPS) {
            if (build.clutch().pedal().ratio() != null && ratio + step >= LEAST_RATIO && ratio + step <= MOST_RATIO) {
                changes.add(new Change(Kind.CLUTCH_RATIO, Map.of("clutch.pedal.ratio", ratio + step), step));
            }
        }
        return List.copyOf(changes);
    }
}
