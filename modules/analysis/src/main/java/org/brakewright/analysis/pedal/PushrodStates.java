package org.brakewright.analysis.pedal;

import java.util.OptionalDouble;
import org.brakewright.kernel.lever.ThreadedRod;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.model.resolved.ResolvedPushrod;
import org.jspecify.annotations.Nullable;

/** Cuts pushrods to the place of pedal and masters. Null without thread and clevis, and where their length is not known. */
public final class PushrodStates {
    private PushrodStates() {}

    /** The rods of the brake pedal: as long as a balance bar's are given, else as the mechanism leaves room. */
    public static @Nullable PushrodState ofBrake(ResolvedBuild build) {
        return switch (build.apply()) {
            case ResolvedApply.Twin twin ->
                of(build.pedal(), 2, OptionalDouble.of(twin.bar().stance().rodLength()));
            case ResolvedApply.Tandem tandem -> ofSingle(build.pedal());
        };
    }

    /** The single rod of a pedal. */
    public static @Nullable PushrodState ofSingle(ResolvedPedal pedal) {
        return of(
                pedal,
                1,
                pedal.mechanism()
                        .map(Mechanisms::rodLength)
                        .map(OptionalDouble::of)
                        .orElse(OptionalDouble.empty()));
    }

    private static @Nullable PushrodState of(ResolvedPedal pedal, int count, OptionalDouble length) {
        ResolvedPushrod rod = pedal.pushrod().orElse(null);
        return rod == null || length.isEmpty() ? null : state(rod, count, length.getAsDouble());
    }

    private static PushrodState state(ResolvedPushrod rod, int count, double length) {
        ThreadedRod cut = new ThreadedRod(length, rod.clevisLength(), rod.clevisThread(), rod.threadDiameter());
        return new PushrodState(
                count,
                length,
                cut.cut(),
                cut.thread(rod.jamNut(), rod.threadPitch()),
                cut.engagement(),
                cut.range(),
                cut.diameters(),
                rod.threadPitch());
    }
}
