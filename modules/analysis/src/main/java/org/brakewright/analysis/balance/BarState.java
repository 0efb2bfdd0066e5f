package org.brakewright.analysis.balance;

/**
 * The balance bar as set.
 *
 * @param frontShare of the push
 * @param offsetM of the bearing toward the front clevis
 * @param turnsLeftToFront turns of the adjuster left toward more front
 * @param turnsLeftToRear turns left toward more rear
 * @param mostFrontShare at the adjuster's front end
 * @param leastFrontShare at its rear end
 * @param shareChangePerTurn change of the front share by one turn
 * @param tiltRad at the hard stop, plus when the front rod is ahead
 * @param tiltLimitRad largest tilt
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
        double tiltLimitRad) {}
