package org.brakewright.model.resolved;

/**
 * A threaded pushrod in SI.
 *
 * @param threadDiameter m
 * @param threadPitch m
 * @param clevisLength from the pin's centre to the face where the rod enters, m
 * @param clevisThread how far it can be screwed in, m
 * @param jamNut its height, m
 */
public record ResolvedPushrod(
        double threadDiameter, double threadPitch, double clevisLength, double clevisThread, double jamNut) {}
