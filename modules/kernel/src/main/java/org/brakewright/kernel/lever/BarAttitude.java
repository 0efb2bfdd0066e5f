package org.brakewright.kernel.lever;

/**
 * How a balance bar and its rods stand, seen square to bar and push.
 *
 * @param tilt of the bar, plus when the front clevis is ahead, rad
 * @param setBack of the clevis pins behind the line through the bearing's centre, minus when ahead, m
 * @param frontLean of the front rod from the push, plus when its far end lies nearer the rear rod, rad
 * @param rearLean of the rear rod from the push, plus when its far end lies nearer the front rod, rad
 */
public record BarAttitude(double tilt, double setBack, double frontLean, double rearLean) {
    public BarAttitude {
        Demand.within("tilt", tilt, Math.abs(tilt) < Math.PI / 2, "less than a quarter turn");
        Demand.within("setBack", setBack, !Double.isNaN(setBack), "a number");
        Demand.within("frontLean", frontLean, Math.abs(frontLean) < Math.PI / 2, "less than a quarter turn");
        Demand.within("rearLean", rearLean, Math.abs(rearLean) < Math.PI / 2, "less than a quarter turn");
    }
}
