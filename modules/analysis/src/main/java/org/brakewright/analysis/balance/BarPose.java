package org.brakewright.analysis.balance;

import org.brakewright.analysis.chain.Pushed;

/**
 * How a balance bar stands, seen from above.
 *
 * @param frontM the front rod ahead of rest
 * @param rearM the rear rod ahead of rest
 * @param bearingM the bearing ahead of rest
 * @param tiltRad plus when the front clevis is ahead
 * @param frontShare of the push
 */
public record BarPose(double frontM, double rearM, double bearingM, double tiltRad, double frontShare) {

    static BarPose of(Pushed pushed) {
        return new BarPose(
                pushed.frontStroke(),
                pushed.rearStroke(),
                pushed.apply().rodTravel(),
                pushed.apply().bar().tilt(),
                pushed.apply().bar().frontShare());
    }
}
