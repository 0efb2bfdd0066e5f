package org.brakewright.analysis.stop;

import java.util.List;
import org.brakewright.analysis.balance.Lock;
import org.jspecify.annotations.Nullable;

/**
 * A stop followed over time, clutch pressed.
 *
 * @param kind which stop
 * @param loadCase the builder's name for it
 * @param speedMS at its start, m/s
 * @param grip of the road
 * @param pedalForceN after its rise, N
 * @param ending how it ended
 * @param distanceM from the first movement of the pedal to rest, or as far as followed when it does not come to rest, m
 * @param timeS the same, s
 * @param mfddMS2 mean fully developed deceleration, m/s2; null when the car does not come down to a tenth of its speed
 * @param peakDecelerationG g
 * @param frontPastPeakS when the front tyres pass the slip of their greatest force, s; null when they stay below it
 * @param rearPastPeakS the same at the rear, s
 * @param frontLockS when the front wheels stop turning, s; null when they turn to the end
 * @param rearLockS the same at the rear, s
 * @param quasiStatic axle that locks first by the quasi-static reckoning at this grip; null when no push locks one
 * @param quasiStaticLockN pedal force at which it does, N; null when none does
 * @param frontRotorRiseK mean rise of one front disc or drum from the temperature of the air, K; null when the brakes' heat is not known
 * @param rearRotorRiseK the same at the rear, K
 * @param energyErrorShare energy of motion lost and not found again as heat and work, over that at the start
 * @param samples over time
 */
public record Stop(
        StopKind kind,
        String loadCase,
        double speedMS,
        double grip,
        double pedalForceN,
        Ending ending,
        double distanceM,
        double timeS,
        @Nullable Double mfddMS2,
        double peakDecelerationG,
        @Nullable Double frontPastPeakS,
        @Nullable Double rearPastPeakS,
        @Nullable Double frontLockS,
        @Nullable Double rearLockS,
        Lock.@Nullable Axle quasiStatic,
        @Nullable Double quasiStaticLockN,
        @Nullable Double frontRotorRiseK,
        @Nullable Double rearRotorRiseK,
        double energyErrorShare,
        List<StopSample> samples) {

    /** How a stop ended. */
    public enum Ending {
        /** At rest. */
        AT_REST,
        /** Still moving after the longest time followed: the brakes hardly slow the car. */
        STILL_MOVING,
        /** The integrator found no step small enough; the numbers are those of the last good one. */
        NOT_SOLVED
    }

    /** Locks closer in time than this are simultaneous, s: wheel-lock sequence test of UN R13-H and FMVSS 135 (from memory). */
    private static final double TOGETHER = 0.1;

    /** Nearer than this to the push that locks a wheel, over that push, a small thing decides whether it does. */
    private static final double TOO_NEAR = 0.05;

    /**
     * The axle that locked first; null when none did. A weakly braked wheel takes its time to stop turning, so with both
     * locked that one was first whose tyres passed their peak first.
     */
    public Lock.@Nullable Axle first() {
        if (frontLockS == null || rearLockS == null) {
            return frontLockS != null ? Lock.Axle.FRONT : rearLockS != null ? Lock.Axle.REAR : null;
        }
        if (Math.abs(frontLockS - rearLockS) < TOGETHER) {
            return Lock.Axle.BOTH;
        }
        return earlier();
    }

    /** How the stop over time and the quasi-static reckoning go together. */
    public enum Comparison {
        /** They name the same axle, or both none. */
        SAME,
        /** The push is too near the one that locks a wheel, or the locks too near each other, for a difference to mean anything. */
        TOO_CLOSE,
        /** They name different axles, or only one of them names any. */
        DIFFERS
    }

    /**
     * Compares both. Wheels that lock together agree with the axle whose tyres passed their peak first; with the other one they are too
     * close to tell.
     */
    public Comparison comparison() {
        Lock.Axle first = first();
        if (quasiStatic == null || quasiStaticLockN == null) {
            return first == null ? Comparison.SAME : Comparison.DIFFERS;
        }
        double over = pedalForceN / quasiStaticLockN - 1;
        if (Math.abs(over) < TOO_NEAR) {
            return Comparison.TOO_CLOSE;
        }
        if (over < 0 || first == null) {
            return over < 0 && first == null ? Comparison.SAME : Comparison.DIFFERS;
        }
        if (first == quasiStatic || (first == Lock.Axle.BOTH && earlier() == quasiStatic)) {
            return Comparison.SAME;
        }
        return first == Lock.Axle.BOTH || quasiStatic == Lock.Axle.BOTH ? Comparison.TOO_CLOSE : Comparison.DIFFERS;
    }

    /** The axle whose tyres passed their peak first. */
    private Lock.Axle earlier() {
        return passed(frontPastPeakS) < passed(rearPastPeakS) ? Lock.Axle.FRONT : Lock.Axle.REAR;
    }

    private static double passed(@Nullable Double time) {
        return time == null ? Double.POSITIVE_INFINITY : time;
    }
}
