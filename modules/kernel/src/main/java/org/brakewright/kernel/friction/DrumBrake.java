package org.brakewright.kernel.friction;

/**
 * One drum brake at one wheel, with a brake factor that is given or comes from {@link BrakeFactor}.
 *
 * <p>Source: R. Limpert, Brake Design and Safety, ch. 2 (from memory): {@code T = C* (p - p0) A r}.
 *
 * @param brakeFactor C*: friction force at the drum over the force on ONE shoe's tip, all shoes together
 * @param wheelCylinderArea area of one wheel-cylinder piston, m2
 * @param drumRadius inner radius of the drum, m
 * @param thresholdPressure push-out pressure that the return springs take, Pa
 */
public record DrumBrake(double brakeFactor, double wheelCylinderArea, double drumRadius, double thresholdPressure) {
    public DrumBrake {
        Require.positive("brakeFactor", brakeFactor);
        Require.positive("wheelCylinderArea", wheelCylinderArea);
        Require.positive("drumRadius", drumRadius);
        Require.notNegative("thresholdPressure", thresholdPressure);
    }

    /** Force on each shoe's tip beyond the return springs, N, at a line pressure in Pa. */
    public double shoeForce(double pressure) {
        return Math.max(0, pressure - thresholdPressure) * wheelCylinderArea;
    }

    /** Brake torque of the wheel, N m, at a line pressure in Pa. */
    public double torque(double pressure) {
        return brakeFactor * shoeForce(pressure) * drumRadius;
    }

    /** Torque gained per pressure above the threshold, N m / Pa. */
    public double torquePerPressure() {
        return brakeFactor * wheelCylinderArea * drumRadius;
    }

    /** Line pressure, Pa, that gives a torque in N m; the threshold itself for no torque. */
    public double pressureFor(double torque) {
        Require.notNegative("torque", torque);
        return thresholdPressure + torque / torquePerPressure();
    }
}
