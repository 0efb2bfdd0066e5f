package org.brakewright.kernel.dynamics;

/** Distance, time, energy and power of a stop at steady deceleration; closed forms of uniform motion. */
public final class StoppingDistance {
    /** Share of the speed in km/h that the regulations grant for reaction of the brakes, m per km/h: 0.36 s. */
    private static final double REGULATION_LAG = 0.1;

    private StoppingDistance() {}

    /** m, from a speed in m/s at a deceleration in m/s2. */
    public static double distance(double speed, double deceleration) {
        require(speed, deceleration);
        return speed * speed / (2 * deceleration);
    }

    /** s, from a speed in m/s at a deceleration in m/s2. */
    public static double time(double speed, double deceleration) {
        require(speed, deceleration);
        return speed / deceleration;
    }

    /** m/s2 that stops from a speed in m/s within a distance in m. */
    public static double deceleration(double speed, double distance) {
        Require.notNegative("speed", speed);
        Require.positive("distance", distance);
        return speed * speed / (2 * distance);
    }

    /** J, of a mass in kg at a speed in m/s. */
    public static double energy(double mass, double speed) {
        Require.positive("mass", mass);
        Require.notNegative("speed", speed);
        return mass * speed * speed / 2;
    }

    /** W, of a braking force in N at a speed in m/s; greatest when the stop begins. */
    public static double power(double force, double speed) {
        return force * speed;
    }

    /** W, the energy of the whole stop over its time. */
    public static double meanPower(double mass, double speed, double deceleration) {
        return energy(mass, speed) / time(speed, deceleration);
    }

    /**
     * Stopping distance when the brakes answer late and then build up in a straight line, m.
     *
     * @param speed m/s
     * @param deceleration steady deceleration once built up, m/s2
     * @param deadTime s before anything happens
     * @param buildUpTime s from nothing to the steady deceleration
     */
    public static double distance(double speed, double deceleration, double deadTime, double buildUpTime) {
        require(speed, deceleration);
        Require.notNegative("deadTime", deadTime);
        Require.notNegative("buildUpTime", buildUpTime);
        double lost = deceleration * buildUpTime / 2;
        if (lost >= speed) {
            return speed * (deadTime + 2.0 / 3.0 * Math.sqrt(2 * buildUpTime * speed / deceleration));
        }
        double ramp = speed * buildUpTime - deceleration * buildUpTime * buildUpTime / 6;
        return speed * deadTime + ramp + distance(speed - lost, deceleration);
    }

    /**
     * Distance limit in the form the regulations use, {@code 0.1 v + c v^2}, m.
     *
     * @param speedKmh speed in km/h, as the regulations write it
     * @param quadratic c, m per (km/h)^2
     */
    public static double regulation(double speedKmh, double quadratic) {
        Require.notNegative("speedKmh", speedKmh);
        Require.positive("quadratic", quadratic);
        return REGULATION_LAG * speedKmh + quadratic * speedKmh * speedKmh;
    }

    /** Steady deceleration, m/s2, that the quadratic term of {@link #regulation} stands for: 1/(25.92 c). */
    public static double impliedDeceleration(double quadratic) {
        Require.positive("quadratic", quadratic);
        return 1 / (Mfdd.KMH_FACTOR * quadratic);
    }

    private static void require(double speed, double deceleration) {
        Require.notNegative("speed", speed);
        Require.positive("deceleration", deceleration);
    }
}
