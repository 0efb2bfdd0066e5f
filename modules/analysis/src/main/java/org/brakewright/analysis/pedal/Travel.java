package org.brakewright.analysis.pedal;

/**
 * Where pedal and pistons stand.
 *
 * @param padM pedal travel at the pad from free position
 * @param frontStrokeM stroke of the front master, or of the tandem's chamber that feeds the front
 * @param rearStrokeM stroke of the rear master, or of the tandem's chamber that feeds the rear
 */
public record Travel(double padM, double frontStrokeM, double rearStrokeM) {}
