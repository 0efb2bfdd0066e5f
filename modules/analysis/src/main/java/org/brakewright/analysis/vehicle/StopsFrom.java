package org.brakewright.analysis.vehicle;

import java.util.List;
import java.util.stream.DoubleStream;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.kernel.dynamics.StoppingDistance;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedLoadCase;

/**
 * Stops from the speeds that published tests use: 100 km/h, and 80 % of the top speed up to 160 km/h when the car goes
 * faster than 125 km/h (UN R13-H Annex 3 and FMVSS 135 S7.5, S7.6, from memory).
 */
public final class StopsFrom {
    /** Most force at the pad in those tests, N (from memory). */
    public static final double MOST_FORCE = 500;

    private static final double KMH = 1 / 3.6;
    private static final double COLD_TEST = 100 * KMH;
    private static final double FAST_CAR = 125 * KMH;
    private static final double FASTEST_TEST = 160 * KMH;

    /** Build-up allowance of the regulations' distance formula, s: 0.1 v with v in km/h and distance in m is 0.36 s. */
    private static final double BUILD_UP = 0.36;

    private StopsFrom() {}

    /** What one load case holds: the deceleration at which its first wheel locks at the car's grip, g. */
    public record FirstLock(ResolvedLoadCase loadCase, double decelerationG) {}

    /** The stops of a build. */
    public static List<StopFrom> of(ResolvedBuild build, ChainCurve curve, List<FirstLock> firstLocks) {
        StopFrom worst = null;
        double force = curve.at(MOST_FORCE).totalForce();
        for (FirstLock lock : firstLocks) {
            double byForce = force / (lock.loadCase().mass() * Gravity.STANDARD);
            double held = Math.min(lock.decelerationG(), byForce);
            if (worst == null || held < worst.decelerationG()) {
                worst = new StopFrom(0, held, lock.loadCase().name(), lock.decelerationG() < byForce, 0);
            }
        }
        StopFrom held = worst;
        return held == null
                ? List.of()
                : speeds(build.car().topSpeed())
                        .mapToObj(speed -> from(speed, held))
                        .toList();
    }

    private static DoubleStream speeds(double topSpeed) {
        return topSpeed > FAST_CAR
                ? DoubleStream.of(COLD_TEST, Math.min(0.8 * topSpeed, FASTEST_TEST))
                : DoubleStream.of(Math.min(COLD_TEST, topSpeed));
    }

    private static StopFrom from(double speed, StopFrom held) {
        double deceleration = held.decelerationG() * Gravity.STANDARD;
        double distance = StoppingDistance.distance(speed, deceleration, BUILD_UP, 0);
        return new StopFrom(speed, held.decelerationG(), held.loadCase(), held.byLock(), distance);
    }
}
