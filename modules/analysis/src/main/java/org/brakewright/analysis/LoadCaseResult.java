package org.brakewright.analysis;

import java.util.List;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.jspecify.annotations.Nullable;

/**
 * Everything about one load case.
 *
 * @param name the builder's name for it
 * @param massKg kg
 * @param frontLoadN static
 * @param rearLoadN static
 * @param cgHeightM over the ground
 * @param criticalDecelerationG start of the first stretch beyond 0.15 g over which the rear uses more grip than the front; 0 when always; null when never
 * @param rearFirst all such stretches, rising
 * @param gripLock which axle locks first at the car's own grip; null when no pedal force locks a wheel
 * @param allLockedForceN pedal force that locks all four wheels at the car's grip; null when none does
 * @param atDeceleration at 0.1 to 1.2 g, those a pedal can reach
 * @param lock at grips of 0.1 to 1.2, those at which a wheel locks
 */
public record LoadCaseResult(
        String name,
        double massKg,
        double frontLoadN,
        double rearLoadN,
        double cgHeightM,
        @Nullable Double criticalDecelerationG,
        List<RearFirst> rearFirst,
        @Nullable Lock gripLock,
        @Nullable Double allLockedForceN,
        List<OperatingPoint> atDeceleration,
        List<Lock> lock) {
    /** Deceleration at which the first wheel locks at the car's grip, g; that grip when no push locks a wheel. */
    public double firstLockG(double grip) {
        return gripLock == null ? grip : gripLock.decelerationG();
    }
}
