package org.brakewright.kernel.dynamics;

/**
 * A two-axle car on a level road, and how braking moves its load forward.
 *
 * <p>Quasi-static: rigid body, no pitch dynamics, no aerodynamic force. Source: UN Regulation 13-H Annex 5, form of N1 and N2
 * (from memory). Past lift-off the airborne axle carries nothing and the other carries the weight.
 *
 * @param frontStatic load on the front axle at rest, N
 * @param rearStatic load on the rear axle at rest, N
 * @param wheelbase m
 * @param cgHeight height of the center of gravity above the road, m
 */
public record AxleLoads(double frontStatic, double rearStatic, double wheelbase, double cgHeight) {
    public AxleLoads {
        Require.positive("frontStatic", frontStatic);
        Require.positive("rearStatic", rearStatic);
        Require.positive("wheelbase", wheelbase);
        Require.positive("cgHeight", cgHeight);
    }

    /** N. */
    public double weight() {
        return frontStatic + rearStatic;
    }

    /** Share of the weight on the rear axle at rest, the literature's psi. */
    public double rearStaticShare() {
        return rearStatic / weight();
    }

    /** Height of the center of gravity over wheelbase, the literature's chi. */
    public double heightRatio() {
        return cgHeight / wheelbase;
    }

    /** Front axle load, N, at a deceleration over g (negative when the car gains forward speed). */
    public double front(double decelerationG) {
        return Math.clamp(frontStatic + transfer(decelerationG), 0, weight());
    }

    /** Rear axle load, N, at a deceleration over g. */
    public double rear(double decelerationG) {
        return Math.clamp(rearStatic - transfer(decelerationG), 0, weight());
    }

    /** Deceleration over g at which the rear wheels leave the road. */
    public double liftOffDecelerationG() {
        return rearStatic * wheelbase / (weight() * cgHeight);
    }

    private double transfer(double decelerationG) {
        return decelerationG * weight() * heightRatio();
    }
}
