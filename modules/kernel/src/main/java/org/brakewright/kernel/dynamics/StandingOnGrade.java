package org.brakewright.kernel.dynamics;

/**
 * A car held on a slope: the loads normal to the road, and the grip its braked wheels need.
 *
 * <p>Statics, with the slope's pull acting at the height of the center of gravity.
 *
 * @param loads the car on the level
 * @param noseUpAngle slope, rad; positive when the nose points uphill, negative when it points downhill
 */
public record StandingOnGrade(AxleLoads loads, double noseUpAngle) {
    public StandingOnGrade {
        Require.that(Math.abs(noseUpAngle) < Math.PI / 2, "noseUpAngle", noseUpAngle, "must lie within -pi/2 and pi/2");
        double tipping = Math.tan(noseUpAngle) * loads.heightRatio();
        double rear = loads.rearStaticShare();
        Require.that(
                tipping < 1 - rear && -tipping < rear,
                "noseUpAngle",
                noseUpAngle,
                "must be below that of tipping over");
    }

    /** Load of the front axle normal to the road, N. */
    public double front() {
        return loads.frontStatic() * Math.cos(noseUpAngle) - tilt();
    }

    /** Load of the rear axle normal to the road, N. */
    public double rear() {
        return loads.rearStatic() * Math.cos(noseUpAngle) + tilt();
    }

    /** Force along the road that holds the car, N, whichever way it points. */
    public double forceNeeded() {
        return loads.weight() * Math.abs(Math.sin(noseUpAngle));
    }

    /** Friction coefficient between tire and road when only the rear wheels hold. */
    public double rearGripNeeded() {
        return forceNeeded() / rear();
    }

    /** Friction coefficient between tire and road when only the front wheels hold. */
    public double frontGripNeeded() {
        return forceNeeded() / front();
    }

    private double tilt() {
        return loads.weight() * Math.sin(noseUpAngle) * loads.heightRatio();
    }
}
