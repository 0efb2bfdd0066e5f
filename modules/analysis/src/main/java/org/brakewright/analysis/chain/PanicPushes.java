package org.brakewright.analysis.chain;

import java.util.OptionalDouble;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;
import org.jspecify.annotations.Nullable;

/** Works out the pressures of a panic push. */
public final class PanicPushes {
    private PanicPushes() {}

    /** The panic push of a build. */
    public static PanicPush of(ResolvedBuild build, Chain chain) {
        double push = build.aims().panicPush();
        ChainState state = chain.at(push);
        double rear = chain.rearBeforeValve(push);
        ResolvedApply apply = build.apply();
        return switch (apply) {
            case ResolvedApply.Twin twin ->
                new PanicPush(
                        push,
                        state.frontPressure(),
                        rear,
                        least(twin.front().ratedPressure(), build.front().ratedPressure()),
                        least(twin.rear().ratedPressure(), build.rear().ratedPressure()));
            case ResolvedApply.Tandem tandem ->
                new PanicPush(
                        push,
                        state.frontPressure(),
                        rear,
                        least(tandem.master().ratedPressure(), build.front().ratedPressure()),
                        least(tandem.master().ratedPressure(), build.rear().ratedPressure()));
        };
    }

    private static @Nullable Double least(OptionalDouble one, OptionalDouble other) {
        if (one.isEmpty() && other.isEmpty()) {
            return null;
        }
        return Math.min(one.orElse(Double.POSITIVE_INFINITY), other.orElse(Double.POSITIVE_INFINITY));
    }
}
