package org.brakewright.analysis.chain;

import org.brakewright.analysis.hydraulics.ApplyState;
import org.brakewright.analysis.pedal.LeverState;

/**
 * The whole car under one push: one solution of pedal, bar, masters and lines together.
 *
 * @param state forces and pressures
 * @param apply masters and bar
 * @param lever the pedal
 * @param padTravel of the pad from its free position, m
 */
public record Pushed(ChainState state, ApplyState apply, LeverState lever, double padTravel) {

    /** Stroke of the piston that fills the front, m. */
    public double frontStroke() {
        return apply.front().stroke();
    }

    /** Stroke of the other piston, m. */
    public double rearStroke() {
        return apply.rear().stroke();
    }
}
