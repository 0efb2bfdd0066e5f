package org.brakewright.analysis.heat;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The car with its brakes as hot as they get where least is left of them.
 *
 * @param schedule the one that does it
 * @param timeS when, s
 * @param frontRotorK mean temperature of the front rotors then, K
 * @param rearRotorK of the rear rotors, K
 * @param frontForceShare front brake force at the same pressure over that of the working brake
 * @param rearForceShare the same at the rear
 * @param coldEffortN pedal effort of the hard stop with working brakes, N
 * @param effortN the same hot, N; null when no push gives it
 * @param decelerationShare what the cold effort gives hot, over the hard stop
 * @param frontShare front brake force over all brake force at the cold effort, hot
 * @param loadCases who locks first, hot
 */
public record HotBrakes(
        String schedule,
        double timeS,
        double frontRotorK,
        double rearRotorK,
        double frontForceShare,
        double rearForceShare,
        double coldEffortN,
        @Nullable Double effortN,
        double decelerationShare,
        double frontShare,
        List<HotLoadCase> loadCases) {}
