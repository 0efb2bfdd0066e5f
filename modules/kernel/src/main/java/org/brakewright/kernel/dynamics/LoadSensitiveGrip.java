package org.brakewright.kernel.dynamics;

/**
 * Tires of an axle whose grip falls as their load rises: {@code mu = mu0 (N/N0)^-s}.
 *
 * <p>Common practice, no source: a power law has the asked loss per rise of load near N0 and stays sensible at any load,
 * where a straight line would run below zero. The force {@code mu N} still rises with load.
 *
 * @param grip friction coefficient at the reference load
 * @param sensitivity s, grip lost per relative rise of load, 0 to below 1
 * @param referenceLoad N0, N
 */
public record LoadSensitiveGrip(double grip, double sensitivity, double referenceLoad) {
    public LoadSensitiveGrip {
        Require.positive("grip", grip);
        Require.that(sensitivity >= 0 && sensitivity < 1, "sensitivity", sensitivity, "must be 0 to below 1");
        Require.positive("referenceLoad", referenceLoad);
    }

    /** Friction coefficient at a load, N. */
    public double at(double load) {
        Require.positive("load", load);
        return sensitivity == 0 ? grip : grip * Math.pow(load / referenceLoad, -sensitivity);
    }

    /** Greatest force along the road at a load, N; none without load. */
    public double force(double load) {
        Require.notNegative("load", load);
        return load == 0 ? 0 : at(load) * load;
    }
}
