package org.brakewright.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.junit.jupiter.api.Test;

/** Locks and inversions found by pressing harder and harder in small steps, against those found in closed form. */
class LockOrderScanTest {
    private static final int BUILDS = 300;

    /** N. */
    private static final double STEP = 1;

    /** Nothing that the scan looks for lies beyond, N. */
    private static final double MOST = 6000;

    /**
     * A car on its load case, by statics written out here.
     *
     * @param states at every step of the push
     * @param loadCase its loads
     * @param heightRatio of the center of gravity over the wheelbase
     */
    private record Scan(List<ChainState> states, ResolvedLoadCase loadCase, double heightRatio) {
        static Scan of(Rig rig, int loadCase) {
            ResolvedLoadCase loads = rig.build().car().loadCases().get(loadCase);
            return new Scan(
                    DoubleStream.iterate(0, force -> force <= MOST, force -> force + STEP)
                            .mapToObj(rig::at)
                            .toList(),
                    loads,
                    loads.cgHeight() / rig.build().car().wheelbase());
        }

        double g(ChainState state) {
            return state.totalForce() / (loadCase.mass() * Gravity.STANDARD);
        }

        double frontAdhesion(ChainState state) {
            return state.frontForce() / (loadCase.frontMass() * Gravity.STANDARD + transfer(state));
        }

        /** Infinite without load. */
        double rearAdhesion(ChainState state) {
            double load = loadCase.rearMass() * Gravity.STANDARD - transfer(state);
            return load > 0 ? state.rearForce() / load : Double.POSITIVE_INFINITY;
        }

        private double transfer(ChainState state) {
            return state.totalForce() * heightRatio;
        }
    }

    @Test
    void theFirstAxleToReachTheGripIsTheOneTold() {
        RandomCars.each(BUILDS, rig -> {
            Analysis analysis = Analyse.analyse(rig.build());
            for (int i = 0; i < 2; i++) {
                LoadCaseResult result = analysis.loadCases().get(i);
                Scan scan = Scan.of(rig, i);
                assertThat(result.lock()).isNotEmpty();
                for (Lock lock : result.lock()) {
                    compare(scan, lock);
                }
            }
        });
    }

    private static void compare(Scan scan, Lock lock) {
        ChainState before = scan.states().getFirst();
        for (ChainState now : scan.states()) {
            boolean front = scan.frontAdhesion(now) >= lock.grip();
            boolean rear = scan.rearAdhesion(now) >= lock.grip();
            if (front || rear) {
                assertThat(lock.decelerationG()).isBetween(scan.g(before) - 1e-9, scan.g(now) + 1e-9);
                if (front != rear && lock.axle() != Lock.Axle.BOTH) {
                    assertThat(lock.axle()).isEqualTo(front ? Lock.Axle.FRONT : Lock.Axle.REAR);
                }
                return;
            }
            before = now;
        }
        assertThat(lock.decelerationG()).isGreaterThan(scan.g(before));
    }

    @Test
    void theRearIsAheadExactlyInTheStretchesTold() {
        RandomCars.each(BUILDS, rig -> {
            Analysis analysis = Analyse.analyse(rig.build());
            for (int i = 0; i < 2; i++) {
                Scan scan = Scan.of(rig, i);
                compare(scan, analysis.loadCases().get(i).rearFirst());
            }
        });
    }

    private static void compare(Scan scan, List<RearFirst> stretches) {
        for (ChainState state : scan.states()) {
            double z = scan.g(state);
            double lead = scan.rearAdhesion(state) - scan.frontAdhesion(state);
            if (z > 1.2) {
                return;
            }
            if (z > 0.0501 && Math.abs(lead) > 1e-7) { // nobody is told who is first below 0.05 g
                boolean told = stretches.stream().anyMatch(each -> each.fromG() <= z && beyond(each) >= z);
                assertThat(told).as("rear ahead at %s g, %s", z, stretches).isEqualTo(lead > 0);
            }
        }
    }

    private static double beyond(RearFirst stretch) {
        Double to = stretch.toG();
        return to == null ? Double.POSITIVE_INFINITY : to;
    }

    /** The grip that locks all four is the deceleration at which each axle's load is known (statics). */
    @Test
    void allFourAreLockedAtTheForceTold() {
        RandomCars.each(BUILDS, rig -> {
            double grip = rig.build().car().grip();
            for (int i = 0; i < 2; i++) {
                ResolvedLoadCase loadCase = rig.build().car().loadCases().get(i);
                Double told = Analyse.analyse(rig.build()).loadCases().get(i).allLockedForceN();
                if (told != null) {
                    double weight = loadCase.mass() * Gravity.STANDARD;
                    double transfer = grip
                            * weight
                            * loadCase.cgHeight()
                            / rig.build().car().wheelbase();
                    ChainState state = rig.at(told);
                    double front = state.frontForce() / (loadCase.frontMass() * Gravity.STANDARD + transfer);
                    double rear = state.rearForce() / (loadCase.rearMass() * Gravity.STANDARD - transfer);
                    assertThat(Math.min(front, rear)).isCloseTo(grip, within(1e-9));
                }
            }
        });
    }
}
