package org.brakewright.analysis.chain;

/**
 * State of the chain at one pedal force, wheels turning.
 *
 * @param pedalForce N
 * @param thrust on the balance bar's bearing or the booster's rod, N
 * @param frontPressure at the front wheels, Pa
 * @param rearPressure at the rear wheels, Pa
 * @param frontForce of both front wheels at the ground, N
 * @param rearForce of both rear wheels at the ground, N
 */
public record ChainState(
        double pedalForce,
        double thrust,
        double frontPressure,
        double rearPressure,
        double frontForce,
        double rearForce) {

    /** Brake force of the car, N. */
    public double totalForce() {
        return frontForce + rearForce;
    }

    /** The state a share (0 to 1) of the way to another one, in a straight line. */
    public ChainState toward(ChainState other, double share) {
        return new ChainState(
                mix(pedalForce, other.pedalForce, share),
                mix(thrust, other.thrust, share),
                mix(frontPressure, other.frontPressure, share),
                mix(rearPressure, other.rearPressure, share),
                mix(frontForce, other.frontForce, share),
                mix(rearForce, other.rearForce, share));
    }

    private static double mix(double from, double to, double share) {
        return from + share * (to - from);
    }
}
