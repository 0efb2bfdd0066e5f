package org.brakewright.analysis.tolerance;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.balance.Balance;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.HardStops;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.analysis.vehicle.OperatingPoints;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedLoadCase;

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

    /** What becomes of a car: the same numbers as its whole analysis gives, and none of the others. */
    static Sample of(ResolvedBuild build, double[] grips) {
        ChainCurve curve = ChainCurve.of(Chain.of(build));
        List<CaseSample> cases = new ArrayList<>();
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            cases.add(of(
                    new Balance(curve, Loads.of(build.car(), loadCase)),
                    grips,
                    build.car().grip()));
        }
        HardStop stop = HardStops.of(build, new OperatingPoints(build, curve), point -> List.of());
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

    private static CaseSample of(Balance balance, double[] grips, double ownGrip) {
        List<First> first = new ArrayList<>();
        for (double grip : grips) {
            first.add(first(balance, grip));
        }
        first.add(first(balance, ownGrip));
        Double critical = RearFirst.critical(balance.rearFirst());
        return new CaseSample(critical == null ? Double.NaN : critical, first);
    }

    private static First first(Balance balance, double grip) {
        Lock.Axle axle = balance.first(grip).orElse(null);
        if (axle == null) {
            return First.NONE;
        }
        return switch (axle) {
            case FRONT -> First.FRONT;
            case REAR -> First.REAR;
            case BOTH -> First.TOGETHER;
        };
    }
}
