package org.brakewright.analysis.clutch;

import org.brakewright.kernel.clutch.CoverPoint;

/**
 * The whole release at one place of the bearing.
 *
 * @param bearingWay of the bearing from rest, gap included, m
 * @param cover what the cover does there
 * @param pressurePa in the line
 * @param masterStroke lost stroke included, m
 * @param armTravel of the pad without what arm and mount give, m
 * @param padTravel from free position, m
 * @param effort at the pad while pushing, N
 * @param returnForce with which the pedal comes back when let go, friction taken off, N
 */
public record ReleaseState(
        double bearingWay,
        CoverPoint cover,
        double pressurePa,
        double masterStroke,
        double armTravel,
        double padTravel,
        double effort,
        double returnForce) {}
