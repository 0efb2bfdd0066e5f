package org.brakewright.analysis.chain;

/**
 * State of the chain at one pedal force, wheels turning.
 *
 * @param pedalForce N
 * @param frontPressure Pa
 * @param rearPressure Pa, behind the valve
 * @param frontForce of both front wheels at the ground, N
 * @param rearForce of both rear wheels at the ground, N
 */
public record ChainState(
        double pedalForce, double frontPressure, double rearPressure, double frontForce, double rearForce) {

    /** Brake force of the car, N. */
    public double totalForce() {
        return frontForce + rearForce;
    }
}
