package org.brakewright.model.resolved;

import java.util.Optional;

/**
 * The pedal in SI.
 *
 * @param ratio pad travel over pushrod travel, at rest when the mechanism is known
 * @param freePlay at the pad, m
 * @param travelToStop at the pad, from free position, m
 * @param efficiency force at the masters over force at the pad times ratio
 * @param mountStiffness force over movement at the pad, N/m
 * @param armStiffness of the pedal arm alone, force over movement at the pad, N/m
 * @param slack of rods and clevises beyond the free play, along the rod, m
 * @param mechanism where its points lie; empty when only the ratio is known
 * @param pushrod its thread and clevis; empty when not given
 */
public record ResolvedPedal(
        double ratio,
        double freePlay,
        double travelToStop,
        double efficiency,
        double mountStiffness,
        double armStiffness,
        double slack,
        Optional<ResolvedMechanism> mechanism,
        Optional<ResolvedPushrod> pushrod) {}
