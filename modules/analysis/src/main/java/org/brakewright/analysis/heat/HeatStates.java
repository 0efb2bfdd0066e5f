package org.brakewright.analysis.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.analysis.balance.Balance;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.analysis.balance.Situation;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.kernel.dynamics.RoadForces;
import org.brakewright.kernel.ode.Precision;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedHeat;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.resolved.ResolvedSchedule;
import org.jspecify.annotations.Nullable;

/** Works out how hot the brakes get on every schedule of a build, and what is left of them. */
public final class HeatStates {
    /** Error allowed in each step: 0.1 mK, and a ten-millionth of the value. */
    private static final Precision PRECISION = new Precision(1e-4, 1e-7);

    private final ResolvedBuild build;
    private final ChainCurve curve;
    private final @Nullable HardStop hardStop;
    private String hottestName = "";
    private ScheduleRun.@Nullable HotMoment hottest;

    private boolean withCooling = true;

    private HeatStates(ResolvedBuild build, ChainCurve curve, @Nullable HardStop hardStop) {
        this.build = build;
        this.curve = curve;
        this.hardStop = hardStop;
    }

    /** The heat of a build; null when it names no schedule. */
    public static @Nullable HeatState of(ResolvedBuild build, ChainCurve curve, @Nullable HardStop hardStop) {
        return of(build, curve, hardStop, PRECISION);
    }

    /** The same without driving on to cool, for trying many values; the cooling times are null. */
    public static @Nullable HeatState peaks(ResolvedBuild build, ChainCurve curve, @Nullable HardStop hardStop) {
        return build.heat()
                .map(heat -> {
                    HeatStates states = new HeatStates(build, curve, hardStop);
                    states.withCooling = false;
                    return states.all(heat, PRECISION);
                })
                .orElse(null);
    }

    /** The same with another error allowed in each step. */
    static @Nullable HeatState of(
            ResolvedBuild build, ChainCurve curve, @Nullable HardStop hardStop, Precision precision) {
        return build.heat()
                .map(heat -> new HeatStates(build, curve, hardStop).all(heat, precision))
                .orElse(null);
    }

    private HeatState all(ResolvedHeat heat, Precision precision) {
        HeatedCar car = new HeatedCar(build, heat, curve);
        List<ScheduleHeat> done = new ArrayList<>();
        List<String> unsolved = new ArrayList<>();
        for (ResolvedSchedule schedule : heat.schedules()) {
            ScheduleRun run = new ScheduleRun(build, heat, car, schedule, precision);
            if (!withCooling) {
                run.stayHot();
            }
            run.run(frontForce(), rearForce()).ifPresentOrElse(done::add, () -> unsolved.add(schedule.name()));
            keepHotter(schedule.name(), run.hottest());
        }
        return new HeatState(
                heat.ambient(), build.car().heaviest().name(), List.copyOf(done), List.copyOf(unsolved), hot());
    }

    private void keepHotter(String name, ScheduleRun.@Nullable HotMoment moment) {
        if (moment != null && moment.worseThan(hottest)) {
            hottest = moment;
            hottestName = name;
        }
    }

    private double frontForce() {
        return hardStop == null ? 1 : hardStop.point().frontForceN();
    }

    private double rearForce() {
        return hardStop == null ? 1 : hardStop.point().rearForceN();
    }

    private @Nullable HotBrakes hot() {
        ScheduleRun.HotMoment moment = hottest;
        HardStop stop = hardStop;
        if (moment == null || stop == null) {
            return null;
        }
        double front = moment.frontLeft();
        double rear = moment.rearLeft();
        OperatingPoint point = stop.point();
        double frontHot = front * point.frontForceN();
        double rearHot = rear * point.rearForceN();
        return new HotBrakes(
                hottestName,
                moment.time(),
                moment.frontRotor(),
                moment.rearRotor(),
                front,
                rear,
                point.pedalForceN(),
                effort(front, rear),
                (frontHot + rearHot) / (point.frontForceN() + point.rearForceN()),
                frontHot / (frontHot + rearHot),
                loadCases(front, rear));
    }

    private @Nullable Double effort(double front, double rear) {
        Situation situation = situation(build.car().heaviest(), front, rear);
        OptionalDouble force =
                new Balance(curve, situation).pedalForce(build.aims().hardStopG());
        return force.isPresent() ? force.getAsDouble() : null;
    }

    private List<HotLoadCase> loadCases(double front, double rear) {
        List<HotLoadCase> cases = new ArrayList<>();
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            Balance balance = new Balance(curve, situation(loadCase, front, rear));
            cases.add(new HotLoadCase(
                    loadCase.name(),
                    RearFirst.critical(balance.rearFirst()),
                    balance.lock(build.car().grip()).orElse(null)));
        }
        return List.copyOf(cases);
    }

    private Situation situation(ResolvedLoadCase loadCase, double front, double rear) {
        return new Situation(RoadForces.brakesOnly(Loads.of(build.car(), loadCase)), front, rear, 0);
    }
}
