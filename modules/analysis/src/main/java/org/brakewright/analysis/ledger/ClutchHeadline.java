package org.brakewright.analysis.ledger;

import org.brakewright.analysis.clutch.ClutchState;
import org.jspecify.annotations.Nullable;

/**
 * What the verdict on a clutch stands on, over that plate, new or worn, which is worse.
 *
 * @param effortN most effort
 * @param spareM bearing travel beyond what frees it at the pedal's end; minus when it is not free
 * @param torqueNM carried by uniform wear
 */
public record ClutchHeadline(double effortN, double spareM, double torqueNM) {

    static @Nullable ClutchHeadline of(@Nullable ClutchState clutch) {
        return clutch == null
                ? null
                : new ClutchHeadline(
                        clutch.heaviest().mostEffortN(),
                        clutch.leastFree().spareM(),
                        clutch.torque().uniformWearNM());
    }
}
