package org.brakewright.kernel.thermal;

/** One stop at steady deceleration, too short to cool: how warm the whole rotor gets, and its rubbed face on the way. */
public final class SingleStop {
    private SingleStop() {}

    /** Rise of the mean temperature, K: energy in J over mass in kg and specific heat in J/(kg K). */
    public static double meanRise(double energy, double mass, double specificHeat) {
        Require.notNegative("energy", energy);
        Require.positive("mass", mass);
        Require.positive("specificHeat", specificHeat);
        return energy / (mass * specificHeat);
    }

    /**
     * Rise of the rubbed face of a body without a far side, heated by a flux that falls to nothing in a straight line, K (T. P. Newcomb, J. Mech.
     * Eng. Sci. 1960, from memory; closed form of the half-space).
     *
     * @param flux at the start, W/m2
     * @param duration of the stop, s
     * @param effusivity J/(m2 K s^0.5)
     * @param time since the start, s, up to the duration
     */
    public static double faceRise(double flux, double duration, double effusivity, double time) {
        Require.that(time >= 0 && time <= duration, "time", time, "must lie within the stop");
        double root = 2 * flux * Math.sqrt(time / Math.PI) / effusivity;
        return root * (1 - 2 * time / (3 * duration));
    }

    /** Greatest rise of that face, K: in the middle of the stop. */
    public static double greatestFaceRise(double flux, double duration, double effusivity) {
        return faceRise(flux, duration, effusivity, 0.5 * duration);
    }
}
