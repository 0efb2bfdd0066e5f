package org.brakewright.analysis.pedal;

/**
 * Where pedal and pistons stand.
 *
 * @param padM pedal travel at the pad from free position
 * @param frontStrokeM stroke of the front master, or of the tandem's chamber that feeds the front
 * @param rearStrokeM stroke of the rear master, or of the tandem's chamber that feeds the rear
 * @param barTiltRad tilt of the balance bar from its rest position, plus when the front rod is ahead; 0 without a bar
 */
public record Travel(double padM, double frontStrokeM, double rearStrokeM, double barTiltRad) {}
