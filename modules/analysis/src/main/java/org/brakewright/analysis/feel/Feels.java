package org.brakewright.analysis.feel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.brakewright.analysis.hydraulics.Cause;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.pedal.TravelShare.Where;
import org.brakewright.analysis.resolve.Resolution;
import org.brakewright.analysis.resolve.Resolve;
import org.brakewright.analysis.tolerance.Input;
import org.brakewright.analysis.tolerance.Inputs;
import org.brakewright.model.Build;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** Works out how firm or soft a pedal may be. */
public final class Feels {
    private static final double BEYOND_HARD_STOP = 1.3;

    /** N: the most at a pedal in UN R13-H and FMVSS 135, from memory. */
    private static final double LEAST_RANGE = 500;

    private Feels() {}

    /**
     * The feel of a build.
     *
     * @param build as written
     * @param resolved the same, resolved, with its ledger
     * @param hardStopForce pedal force of its hard stop, N; null when no push gives it
     */
    public static Feel of(Build build, Resolution.Resolved resolved, @Nullable Double hardStopForce) {
        List<Input> inputs = Inputs.of(build, resolved.ledger());
        double range = Math.max(LEAST_RANGE, hardStopForce == null ? 0 : BEYOND_HARD_STOP * hardStopForce);
        FeltPedal nominal = new FeltPedal(resolved.build());
        FeltPedal firm = new FeltPedal(moved(build, resolved.build(), TravelInputs.firm(inputs)));
        FeltPedal soft = new FeltPedal(moved(build, resolved.build(), TravelInputs.soft(inputs)));
        return new Feel(
                hardStopForce,
                nominal.curve(range, hardStopForce),
                firm.curve(range, hardStopForce),
                soft.curve(range, hardStopForce),
                hardStopForce == null ? List.of() : difference(firm.budget(hardStopForce), soft.budget(hardStopForce)));
    }

    /** The build with values moved, but for those that contradict others when moved with them. */
    private static ResolvedBuild moved(Build build, ResolvedBuild asAssumed, Map<String, Double> values) {
        return resolved(build, values).orElseGet(() -> oneByOne(build, asAssumed, values));
    }

    private static ResolvedBuild oneByOne(Build build, ResolvedBuild asAssumed, Map<String, Double> values) {
        Map<String, Double> kept = new HashMap<>();
        ResolvedBuild moved = asAssumed;
        for (Map.Entry<String, Double> value : new TreeMap<>(values).entrySet()) {
            kept.put(value.getKey(), value.getValue());
            Optional<ResolvedBuild> further = resolved(build, kept);
            if (further.isEmpty()) {
                kept.remove(value.getKey());
            }
            moved = further.orElse(moved);
        }
        return moved;
    }

    private static Optional<ResolvedBuild> resolved(Build build, Map<String, Double> values) {
        return Resolve.resolve(build, values) instanceof Resolution.Resolved moved
                ? Optional.of(moved.build())
                : Optional.empty();
    }

    private static List<TravelShare> difference(List<TravelShare> firm, List<TravelShare> soft) {
        List<TravelShare> all = new ArrayList<>();
        for (Where where : Where.values()) {
            for (Cause cause : Cause.values()) {
                TravelShare less = sum(firm, where, cause);
                TravelShare more = sum(soft, where, cause);
                double travel = more.padTravelM() - less.padTravelM();
                if (travel != 0) {
                    all.add(new TravelShare(where, cause, more.volumeM3() - less.volumeM3(), travel));
                }
            }
        }
        all.sort(Comparator.comparingDouble(TravelShare::padTravelM).reversed());
        return List.copyOf(all);
    }

    private static TravelShare sum(List<TravelShare> shares, Where where, Cause cause) {
        return shares.stream()
                .filter(share -> share.where() == where && share.cause() == cause)
                .findFirst()
                .orElse(new TravelShare(where, cause, 0, 0));
    }
}
