package org.brakewright.analysis.balance;

import org.jspecify.annotations.Nullable;

/**
 * The balance bar as set.
 *
 * @param frontShare of the push, bar square
 * @param offsetM of the bearing toward the front clevis
 * @param turnsLeftToFront turns of the adjuster left toward more front
 * @param turnsLeftToRear turns left toward more rear
 * @param mostFrontShare at the adjuster's front end
 * @param leastFrontShare at its rear end
 * @param shareChangePerTurn change of the front share by one turn
 * @param tiltRad at the hard stop as solved, plus when the front rod is ahead; at rest without a hard stop
 * @param tiltLimitRad largest tilt
 * @param sideFloatM end float between the clevises; null when not measured
 * @param atRest both pistons home
 * @param atHardStop null when no push gives the hard stop
 * @param frontFailed at the hard stop's push with the front circuit open; null as above
 * @param rearFailed the same with the rear circuit open
 * @param rodLength what a longer front rod does; null as above, and where only judgements are wanted
 */
public record BarState(
        double frontShare,
        double offsetM,
        double turnsLeftToFront,
        double turnsLeftToRear,
        double mostFrontShare,
        double leastFrontShare,
        double shareChangePerTurn,
        double tiltRad,
        double tiltLimitRad,
        @Nullable Double sideFloatM,
        BarPose atRest,
        @Nullable BarPose atHardStop,
        @Nullable FailedPose frontFailed,
        @Nullable FailedPose rearFailed,
        @Nullable RodLengthEffect rodLength) {}
