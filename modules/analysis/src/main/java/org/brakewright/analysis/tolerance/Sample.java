package org.brakewright.analysis.tolerance;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.Analysis;
import org.brakewright.analysis.LoadCaseResult;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.vehicle.HardStop;
import org.jspecify.annotations.Nullable;

/**
 * What is kept of one car drawn. A number that does not exist is NaN.
 *
 * @param effort pedal effort of the hard stop, N
 * @param travel pedal travel of the hard stop, m
 * @param frontShare of the brake force at the hard stop
 * @param idealFrontShare front load over all load at the hard stop
 * @param withinTravel whether pedal and masters have the travel for the hard stop; false when no push gives it
 * @param cases one a load case
 */
record Sample(
        double effort,
        double travel,
        double frontShare,
        double idealFrontShare,
        boolean withinTravel,
        List<CaseSample> cases) {
    private static final double SAME_GRIP = 1e-9;

    /** Which wheels lock first. */
    enum First {
        FRONT,
        REAR,
        TOGETHER,
        NONE
    }

    /**
     * One load case of a car drawn.
     *
     * @param critical deceleration from which the rear comes first, g; NaN when the front always does
     * @param first who locks first at each grip of the table, and at last at the car's own grip
     */
    record CaseSample(double critical, List<First> first) {}

    static Sample of(Analysis analysis, double[] grips) {
        List<CaseSample> cases = new ArrayList<>();
        for (LoadCaseResult result : analysis.loadCases()) {
            cases.add(of(result, grips));
        }
        HardStop stop = analysis.hardStop();
        return stop == null
                ? new Sample(Double.NaN, Double.NaN, Double.NaN, Double.NaN, false, cases)
                : new Sample(
                        stop.point().pedalForceN(),
                        stop.point().pedalTravelM(),
                        stop.frontShare(),
                        stop.idealFrontShare(),
                        stop.point().withinTravel(),
                        cases);
    }

    private static CaseSample of(LoadCaseResult result, double[] grips) {
        List<First> first = new ArrayList<>();
        for (double grip : grips) {
            first.add(first(at(result, grip)));
        }
        first.add(first(result.gripLock()));
        Double critical = result.criticalDecelerationG();
        return new CaseSample(critical == null ? Double.NaN : critical, first);
    }

    private static @Nullable Lock at(LoadCaseResult result, double grip) {
        for (Lock lock : result.lock()) {
            if (Math.abs(lock.grip() - grip) < SAME_GRIP) {
                return lock;
            }
        }
        return null;
    }

    private static First first(@Nullable Lock lock) {
        if (lock == null) {
            return First.NONE;
        }
        return switch (lock.axle()) {
            case FRONT -> First.FRONT;
            case REAR -> First.REAR;
            case BOTH -> First.TOGETHER;
        };
    }
}
