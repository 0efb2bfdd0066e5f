package org.brakewright.analysis.chain;

import java.util.OptionalDouble;
import org.brakewright.analysis.hydraulics.ApplyState;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** Works out the pressures of a panic push. */
public final class PanicPushes {
    private PanicPushes() {}

    /**
     * The panic push of a build.
     *
     * @param hardStop the car there; null when no push gives it
     */
    public static PanicPush of(ResolvedBuild build, ChainCurve curve, @Nullable Pushed hardStop) {
        double push = build.aims().panicPush();
        ResolvedApply apply = build.apply();
        ApplyState panic = curve.pushed(push).apply();
        ApplyState working = hardStop == null ? null : hardStop.apply();
        return new PanicPush(
                push,
                panic.front().pressure(),
                panic.rear().pressure(),
                working == null ? null : working.front().pressure(),
                working == null ? null : working.rear().pressure(),
                least(frontMaster(apply).ratedPressure(), build.front().ratedPressure()),
                least(rearMaster(apply).ratedPressure(), build.rear().ratedPressure()));
    }

    private static Master frontMaster(ResolvedApply apply) {
        return switch (apply) {
            case ResolvedApply.Twin twin -> twin.front();
            case ResolvedApply.Tandem tandem -> tandem.master();
        };
    }

    private static Master rearMaster(ResolvedApply apply) {
        return switch (apply) {
            case ResolvedApply.Twin twin -> twin.rear();
            case ResolvedApply.Tandem tandem -> tandem.master();
        };
    }

    private static @Nullable Double least(OptionalDouble one, OptionalDouble other) {
        if (one.isEmpty() && other.isEmpty()) {
            return null;
        }
        return Math.min(one.orElse(Double.POSITIVE_INFINITY), other.orElse(Double.POSITIVE_INFINITY));
    }
}
