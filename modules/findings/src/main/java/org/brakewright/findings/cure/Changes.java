package org.brakewright.findings.cure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.brakewright.analysis.setting.StockBores;
import org.brakewright.findings.cure.Change.Kind;
import org.brakewright.model.Build;
import org.brakewright.model.brake.DrumBrake;
import org.brakewright.model.brake.WheelBrake;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedBuild;

/** Every single change that is offered for a car, least work first and smallest first within a kind. */
final class Changes {
    private static final int MOST_TURNS = 8;
    private static final int[] BORE_STEPS = {1, -1, 2, -2, 3, -3};
    private static final double[] RATIO_STEPS = {0.25, -0.25, 0.5, -0.5, 0.75, -0.75, 1.0, -1.0, 1.5, -1.5};
    private static final double BAR = 1e5;
    private static final double[] KNEE_STEPS = {-2, 2, -4, 4, -6, 6, -8, 8, -10, 10, -15, 15};
    private static final double[] NEW_KNEES = {40, 35, 30, 25, 20, 15, 10};
    private static final double NEW_SLOPE = 0.3;

    private final List<Change> changes = new ArrayList<>();

    private Changes() {}

    static List<Change> of(Build build, ResolvedBuild resolved) {
        Changes all = new Changes();
        switch (resolved.apply()) {
            case ResolvedApply.Twin twin -> all.twin(twin);
            case ResolvedApply.Tandem tandem ->
                all.bores(
                        Kind.TANDEM_BORE,
                        "apply.bore",
                        steps -> StockBores.master(tandem.master().bore(), steps));
        }
        all.wheelCylinders(build.rear(), Kind.REAR_WHEEL_CYLINDER, "rear.wheel_cylinder");
        all.wheelCylinders(build.front(), Kind.FRONT_WHEEL_CYLINDER, "front.wheel_cylinder");
        all.valve(resolved.apply());
        if (build.pedal().ratio() != null) {
            all.ratio(resolved.pedal().ratio());
        }
        all.changes.sort((a, b) -> a.kind().compareTo(b.kind()));
        return List.copyOf(all.changes);
    }

    private void twin(ResolvedApply.Twin twin) {
        Bar bar = twin.bar();
        for (int turns = 1; turns <= MOST_TURNS; turns++) {
            turn(bar, turns);
            turn(bar, -turns);
        }
        bores(
                Kind.FRONT_BORE,
                "apply.front_master.bore",
                steps -> StockBores.master(twin.front().bore(), steps));
        bores(
                Kind.REAR_BORE,
                "apply.rear_master.bore",
                steps -> StockBores.master(twin.rear().bore(), steps));
    }

    private void turn(Bar bar, int turns) {
        double offset = bar.offset() + turns * bar.movementPerTurn();
        if (Math.abs(offset) <= bar.offsetLimit()) {
            changes.add(new Change(Kind.TURN_BAR, Map.of("apply.balance_bar.offset", offset), turns));
        }
    }

    private void bores(Kind kind, String path, IntToDoubleFunction size) {
        for (int steps : BORE_STEPS) {
            double bore = size.applyAsDouble(steps);
            if (!Double.isNaN(bore)) {
                changes.add(new Change(kind, Map.of(path, bore), steps));
            }
        }
    }

    private void wheelCylinders(WheelBrake brake, Kind kind, String path) {
        if (brake instanceof DrumBrake drum) {
            bores(
                    kind,
                    path,
                    steps -> StockBores.wheelCylinder(drum.wheelCylinder().si(), steps));
        }
    }

    private void ratio(double ratio) {
        for (double step : RATIO_STEPS) {
            if (ratio + step >= 2 && ratio + step <= 8) {
                changes.add(new Change(Kind.PEDAL_RATIO, Map.of("pedal.ratio", ratio + step), step));
            }
        }
    }

    private void valve(ResolvedApply apply) {
        if (apply.valve().isEmpty()) {
            for (double knee : NEW_KNEES) {
                changes.add(new Change(Kind.FIT_VALVE, knee(knee * BAR, NEW_SLOPE), knee * BAR));
            }
        } else if (apply.valve().get().adjustable()) {
            Valve valve = apply.valve().get();
            for (double step : KNEE_STEPS) {
                double knee = valve.knee() + step * BAR;
                if (knee > 0) {
                    changes.add(new Change(Kind.SET_KNEE, knee(knee, valve.slope()), step * BAR));
                }
            }
        }
    }

    private static Map<String, Double> knee(double knee, double slope) {
        return Map.of("apply.proportioning_valve.knee", knee, "apply.proportioning_valve.slope", slope);
    }
}
