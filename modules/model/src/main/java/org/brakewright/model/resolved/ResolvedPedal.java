package org.brakewright.model.resolved;

/**
 * The pedal in SI.
 *
 * @param ratio pad travel over pushrod travel
 * @param freePlay at the pad, m
 * @param travelToStop at the pad, from free position, m
 * @param efficiency force at the masters over force at the pad times ratio
 * @param mountStiffness force over movement at the pad, N/m
 */
public record ResolvedPedal(
        double ratio, double freePlay, double travelToStop, double efficiency, double mountStiffness) {}
