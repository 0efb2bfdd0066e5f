package org.brakewright.kernel.dynamics;

import java.util.OptionalDouble;

/**
 * Mean fully developed deceleration: averaged over distance between 0.8 and 0.1 of the initial speed.
 *
 * <p>Source: Directive 71/320/EEC Annex II (read); UN Regulation 13-H Annex 3 has the same (from memory).
 */
public final class Mfdd {
    /** Twice the square of 3.6: turns (km/h)^2 per m into m/s2. */
    static final double KMH_FACTOR = 25.92;

    private static final double FROM = 0.8;
    private static final double TO = 0.1;
    private static final int NONE = -1;

    private Mfdd() {}

    /**
     * m/s2, as the regulations write it.
     *
     * @param fromKmh 0.8 of the initial speed, km/h
     * @param toKmh 0.1 of the initial speed, km/h
     * @param fromDistance m traveled when the first speed is reached
     * @param toDistance m traveled when the second speed is reached
     */
    public static double fromKmh(double fromKmh, double toKmh, double fromDistance, double toDistance) {
        requireOrder(fromKmh, toKmh, fromDistance, toDistance);
        return (fromKmh * fromKmh - toKmh * toKmh) / (KMH_FACTOR * (toDistance - fromDistance));
    }

    /** m/s2, the same with speeds in m/s. */
    public static double fromSi(double fromSpeed, double toSpeed, double fromDistance, double toDistance) {
        requireOrder(fromSpeed, toSpeed, fromDistance, toDistance);
        return (fromSpeed * fromSpeed - toSpeed * toSpeed) / (2 * (toDistance - fromDistance));
    }

    /**
     * m/s2 of a recorded or computed stop.
     *
     * <p>Between two samples the square of the speed is taken as straight over distance, which is exact for a steady
     * deceleration. A noisy trace may cross a speed several times: the last crossing on the way down to a tenth counts.
     *
     * @param speed m/s, first the initial speed
     * @param distance m, not falling, as many as speeds
     * @return empty when the speed never falls to a tenth of the first
     */
    public static OptionalDouble ofTrace(double[] speed, double[] distance) {
        Require.that(speed.length == distance.length, "distance", distance.length, "must have as many values as speed");
        Require.that(speed.length >= 2, "speed", speed.length, "must have two samples or more");
        Require.positive("speed", speed[0]);
        int last = firstAtOrBelow(TO * speed[0], speed);
        if (last == NONE) {
            return OptionalDouble.empty();
        }
        int developed = firstOfLastRun(FROM * speed[0], speed, last);
        double from = distanceAt(FROM * speed[0], speed, distance, developed);
        double to = distanceAt(TO * speed[0], speed, distance, last);
        return OptionalDouble.of(fromSi(FROM * speed[0], TO * speed[0], from, to));
    }

    private static int firstAtOrBelow(double target, double[] speed) {
        for (int i = 1; i < speed.length; i++) {
            if (speed[i] <= target) {
                return i;
            }
        }
        return NONE;
    }

    /** Start of the run of samples at or below the target that leads up to the given sample. */
    private static int firstOfLastRun(double target, double[] speed, int end) {
        int first = end;
        while (speed[first - 1] <= target) {
            first--;
        }
        return first;
    }

    private static double distanceAt(double target, double[] speed, double[] distance, int reached) {
        double before = speed[reached - 1] * speed[reached - 1];
        double after = speed[reached] * speed[reached];
        double share = (before - target * target) / (before - after);
        return distance[reached - 1] + share * (distance[reached] - distance[reached - 1]);
    }

    private static void requireOrder(double fromSpeed, double toSpeed, double fromDistance, double toDistance) {
        Require.notNegative("toSpeed", toSpeed);
        Require.finite("fromSpeed", fromSpeed);
        Require.that(fromSpeed > toSpeed, "fromSpeed", fromSpeed, "must be above toSpeed " + toSpeed);
        Require.finite("fromDistance", fromDistance);
        Require.finite("toDistance", toDistance);
        Require.that(toDistance > fromDistance, "toDistance", toDistance, "must be above fromDistance " + fromDistance);
    }
}
