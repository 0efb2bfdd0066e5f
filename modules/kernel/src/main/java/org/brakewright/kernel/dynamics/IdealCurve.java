package org.brakewright.kernel.dynamics;

/**
 * The braking forces that use the same grip at both axles: a parabola over deceleration.
 *
 * <p>Source: R. Limpert, Brake Design and Safety, ch. 7; A. Day, Braking of Road Vehicles, ch. 3 (from memory).
 *
 * @param loads the car
 */
public record IdealCurve(AxleLoads loads) {
    /** Ideal force of the front axle, N, at a deceleration over g. */
    public double frontForce(double decelerationG) {
        return decelerationG * loads.front(decelerationG);
    }

    /** Ideal force of the rear axle, N, at a deceleration over g. */
    public double rearForce(double decelerationG) {
        return decelerationG * loads.rear(decelerationG);
    }

    /** Ideal share of the rear axle in the whole force, at a deceleration over g. */
    public double rearForceShare(double decelerationG) {
        return loads.rear(decelerationG) / loads.weight();
    }

    /** Deceleration over g whose ideal front force is the given one, N. */
    public double decelerationAtFrontForce(double frontForce) {
        Require.notNegative("frontForce", frontForce);
        double share = frontForce / loads.weight();
        double frontStatic = 1 - loads.rearStaticShare();
        // Root of chi z^2 + (1 - psi) z = Xf in the form that keeps its digits when chi is small.
        double root = Math.sqrt(frontStatic * frontStatic + 4 * loads.heightRatio() * share);
        double onParabola = 2 * share / (frontStatic + root);
        return onParabola <= loads.liftOffDecelerationG() ? onParabola : share;
    }

    /** The parabola solved for the rear: ideal rear force, N, that goes with a front force, N. */
    public double rearForceAtFront(double frontForce) {
        return rearForce(decelerationAtFrontForce(frontForce));
    }

    /** Deceleration over g at which the ideal rear force is greatest; half of lift-off. */
    public double vertexDecelerationG() {
        return loads.liftOffDecelerationG() / 2;
    }
}
