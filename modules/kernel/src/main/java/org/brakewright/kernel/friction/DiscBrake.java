package org.brakewright.kernel.friction;

/**
 * One disc caliper at one wheel.
 *
 * <p>A pad is pressed on each face of the disc with the force of ONE side's pistons, so the torque is
 * {@code 2 mu p A r}. This holds for fixed and for floating calipers alike: a floating caliper doubles nothing, its
 * bridge only carries the reaction of its one side to the other pad. Source: R. Limpert, Brake Design and Safety, ch. 2
 * (from memory).
 *
 * @param pistonAreaOneSide area of all pistons on one side of the disc, m2
 * @param friction friction coefficient between pad and disc
 * @param effectiveRadius radius at which the friction force acts, m; see {@link EffectiveRadius}
 * @param thresholdPressure pressure below which the pads do not press, Pa
 */
public record DiscBrake(double pistonAreaOneSide, double friction, double effectiveRadius, double thresholdPressure) {
    public DiscBrake {
        Require.positive("pistonAreaOneSide", pistonAreaOneSide);
        Require.positive("friction", friction);
        Require.positive("effectiveRadius", effectiveRadius);
        Require.notNegative("thresholdPressure", thresholdPressure);
    }

    /** Force that presses each pad, N, at a line pressure in Pa. */
    public double clampForce(double pressure) {
        return Math.max(0, pressure - thresholdPressure) * pistonAreaOneSide;
    }

    /** Brake torque of the wheel, N m, at a line pressure in Pa. */
    public double torque(double pressure) {
        return 2 * friction * clampForce(pressure) * effectiveRadius;
    }

    /** Torque gained per pressure above the threshold, N m / Pa. */
    public double torquePerPressure() {
        return 2 * friction * pistonAreaOneSide * effectiveRadius;
    }

    /** Line pressure, Pa, that gives a torque in N m; the threshold itself for no torque. */
    public double pressureFor(double torque) {
        Require.notNegative("torque", torque);
        return thresholdPressure + torque / torquePerPressure();
    }
}
