package org.brakewright.analysis.feel;

/**
 * One point of a force-travel curve.
 *
 * @param pedalForceN N
 * @param padTravelM of the pad from its free position, m
 * @param frontPressurePa at the front wheels, Pa
 * @param rearPressurePa at the rear wheels, Pa
 * @param frontStrokeM of the piston that fills the front, m
 * @param rearStrokeM of the other piston, m
 * @param decelerationG of the heaviest load case, g
 * @param tiltRad of the balance bar, plus when the front clevis is ahead, rad; 0 without one
 */
public record FeelPoint(
        double pedalForceN,
        double padTravelM,
        double frontPressurePa,
        double rearPressurePa,
        double frontStrokeM,
        double rearStrokeM,
        double decelerationG,
        double tiltRad) {}
