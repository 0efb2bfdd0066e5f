package org.brakewright.analysis.vehicle;

import org.jspecify.annotations.Nullable;

/**
 * The whole car at one deceleration, wheels turning.
 *
 * @param decelerationG g
 * @param pedalForceN at the pad
 * @param frontPressurePa at the front wheels
 * @param rearPressurePa at the rear wheels, behind the valve
 * @param frontForceN of both front wheels
 * @param rearForceN of both rear wheels
 * @param frontAdhesion front force over front load
 * @param rearAdhesion rear force over rear load; null when the rear is off the ground
 * @param efficiency deceleration over the larger adhesion; null when the rear is off the ground
 * @param pedalTravelM at the pad from free position
 * @param frontStrokeM of the front master or chamber
 * @param rearStrokeM of the rear master or chamber
 * @param barTiltRad of the balance bar as solved, plus when the front rod is ahead; 0 without one
 * @param withinTravel whether pedal and masters have that much travel
 */
public record OperatingPoint(
        double decelerationG,
        double pedalForceN,
        double frontPressurePa,
        double rearPressurePa,
        double frontForceN,
        double rearForceN,
        double frontAdhesion,
        @Nullable Double rearAdhesion,
        @Nullable Double efficiency,
        double pedalTravelM,
        double frontStrokeM,
        double rearStrokeM,
        double barTiltRad,
        boolean withinTravel) {}
