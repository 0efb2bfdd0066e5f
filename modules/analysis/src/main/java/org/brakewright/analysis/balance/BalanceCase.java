package org.brakewright.analysis.balance;

import org.jspecify.annotations.Nullable;

/**
 * The balance of the car in one case.
 *
 * @param name which case
 * @param rearFirst first stretch that reaches beyond where judging begins (0.15 g, in gear half of the greatest) over which the rear uses more grip than the front; null when there is none
 * @param greatestDecelerationG deceleration with every wheel at the car's grip
 * @param footOffDecelerationG deceleration by drag and engine alone
 * @param gripLock which axle locks first at the car's grip; null when no pedal force locks a wheel
 * @param rearToSpare by how much the rear could brake more before it locks first anywhere from where judging begins to the greatest deceleration, relative; below zero when it does already; null when the rear does not brake
 * @param hardStopForceN pedal force of the hard stop; null when no push gives it
 */
public record BalanceCase(
        CaseName name,
        @Nullable RearFirst rearFirst,
        double greatestDecelerationG,
        double footOffDecelerationG,
        @Nullable Lock gripLock,
        @Nullable Double rearToSpare,
        @Nullable Double hardStopForceN) {

    /** Whether the rear locks first somewhere up to the grip. */
    public boolean rearFirstWithinGrip() {
        return reach() < 1;
    }

    /** Critical over greatest deceleration: below 1 the rear locks first within the grip; infinite when it never does. */
    public double reach() {
        return rearFirst == null ? Double.POSITIVE_INFINITY : rearFirst.fromG() / greatestDecelerationG;
    }
}
