package org.brakewright.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.analysis.balance.Balance;
import org.brakewright.analysis.balance.BalanceCases;
import org.brakewright.analysis.balance.BarStates;
import org.brakewright.analysis.balance.ForceDiagram;
import org.brakewright.analysis.balance.ForceDiagrams;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.balance.RearFirst;
import org.brakewright.analysis.brake.Drums;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.chain.ChainState;
import org.brakewright.analysis.chain.GivingWay;
import org.brakewright.analysis.chain.PanicPush;
import org.brakewright.analysis.chain.PanicPushes;
import org.brakewright.analysis.chain.Pushed;
import org.brakewright.analysis.chain.TravelBudget;
import org.brakewright.analysis.clutch.ClutchState;
import org.brakewright.analysis.clutch.ClutchStates;
import org.brakewright.analysis.failure.Failures;
import org.brakewright.analysis.footwell.FootwellStates;
import org.brakewright.analysis.heat.HeatStates;
import org.brakewright.analysis.lines.LinesStates;
import org.brakewright.analysis.mount.MountStates;
import org.brakewright.analysis.parking.ParkingStates;
import org.brakewright.analysis.pedal.PedalStates;
import org.brakewright.analysis.pedal.TravelShare;
import org.brakewright.analysis.reservoir.DrainBacks;
import org.brakewright.analysis.reservoir.ReservoirDemands;
import org.brakewright.analysis.setting.Advice;
import org.brakewright.analysis.shop.ShopStates;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.HardStops;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.analysis.vehicle.OperatingPoint;
import org.brakewright.analysis.vehicle.OperatingPoints;
import org.brakewright.analysis.vehicle.StopsFrom;
import org.brakewright.kernel.dynamics.AxleLoads;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.jspecify.annotations.Nullable;

/** Computes everything that follows from a build, always together. */
public final class Analyse {
    /** Tenths: decelerations in g and grips of the tables. */
    private static final double[] TENTHS = {0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1, 1.2};

    /** m/s2: service and high-speed stop of UN R13-H and FMVSS 135, pre-test of a state assessment. */
    private static final double[] RULE_DECELERATIONS = {6.43, 5.76, 2.9};

    private final ResolvedBuild build;
    private final Depth depth;
    private final boolean withTables;
    private final @Nullable ClutchState clutch;
    private final Chain chain;
    private final ChainCurve curve;
    private final OperatingPoints points;

    /** How much is wanted. */
    private enum Depth {
        JUDGING,
        CASES,
        TABLES,
        ADVICE
    }

    private Analyse(ResolvedBuild build, Depth depth, @Nullable ClutchState clutch) {
        this.build = build;
        this.depth = depth;
        this.withTables = depth.compareTo(Depth.TABLES) >= 0;
        this.clutch = clutch;
        this.chain = Chain.of(build);
        this.curve = ChainCurve.of(chain);
        this.points = new OperatingPoints(build, curve);
    }

    /** All numbers of a build but the advice. */
    public static Analysis analyse(ResolvedBuild build) {
        return new Analyse(build, Depth.TABLES, ClutchStates.of(build.clutch())).all();
    }

    /** All numbers of a build with the best settings and other layouts, which takes a search. Stops over time come from {@link org.brakewright.analysis.stop.Stops}. */
    public static Analysis withAdvice(ResolvedBuild build) {
        return new Analyse(build, Depth.ADVICE, ClutchStates.of(build.clutch())).all();
    }

    /**
     * The numbers that judgements stand on, for trying many variants of a build: the tables over deceleration, the
     * force diagrams, the cases, the heat and the advice are left out.
     */
    public static Analysis forJudging(ResolvedBuild build) {
        return forJudging(build, ClutchStates.of(build.clutch()));
    }

    /**
     * The same with the clutch taken over from a car whose clutch is the same, or left out.
     *
     * @param clutch null to leave it out
     */
    public static Analysis forJudging(ResolvedBuild build, @Nullable ClutchState clutch) {
        return new Analyse(build, Depth.JUDGING, clutch).all();
    }

    /** As for judging without a clutch, with the balance in every case. */
    public static Analysis withCases(ResolvedBuild build) {
        return new Analyse(build, Depth.CASES, null).all();
    }

    private Analysis all() {
        HardStop hardStop = HardStops.of(build, points, this::budget);
        Pushed atHardStop =
                hardStop == null ? null : curve.pushed(hardStop.point().pedalForceN());
        List<LoadCaseResult> results = new ArrayList<>();
        List<ForceDiagram> diagrams = new ArrayList<>();
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            AxleLoads loads = Loads.of(build.car(), loadCase);
            results.add(result(loadCase, loads));
            if (withTables) {
                diagrams.add(ForceDiagrams.draw(
                        loadCase.name(), curve, loads, 0.3, 0.6, build.car().grip()));
            }
        }
        PanicPush panic = PanicPushes.of(build, curve, atHardStop);
        return new Analysis(
                build.pedal().ratio(),
                build.car().grip(),
                hardStop,
                List.copyOf(results),
                BarStates.of(build, chain, atHardStop, withTables),
                withTables ? Failures.explained(build, chain) : Failures.of(build, chain),
                withTables ? Failures.weakened(build, chain) : List.of(),
                panic,
                effortsForRules(),
                StopsFrom.of(build, curve, firstLocks(results)),
                List.copyOf(diagrams),
                Drums.of(
                        build,
                        hardStop == null ? null : hardStop.point().frontPressurePa(),
                        hardStop == null ? null : hardStop.point().rearPressurePa()),
                ParkingStates.of(build),
                ReservoirDemands.of(build),
                DrainBacks.of(build),
                PedalStates.of(
                        build,
                        chain.lever(),
                        GivingWay.of(chain, build.pedal().travelToStop()),
                        working(atHardStop),
                        withTables),
                withTables ? HeatStates.of(build, curve, hardStop) : null,
                depth == Depth.JUDGING ? List.of() : BalanceCases.of(build, curve),
                depth == Depth.ADVICE ? Advice.of(build) : null,
                clutch,
                List.of(),
                build.shop().map(ShopStates::of).orElse(null),
                withTables ? LinesStates.of(build, LinesStates.Highest.of(panic, clutch)) : null,
                withTables ? MountStates.of(build) : null,
                withTables ? FootwellStates.of(build, hardStop) : null);
    }

    /** With a bar each piston gets its own thrust, else one rod pushes them both. */
    private PedalStates.@Nullable Working working(@Nullable Pushed pushed) {
        if (pushed == null) {
            return null;
        }
        double frontShare = pushed.apply().bar().frontShare();
        double share = build.apply() instanceof ResolvedApply.Twin ? Math.max(frontShare, 1 - frontShare) : 1;
        return new PedalStates.Working(pushed.lever(), share * pushed.state().thrust());
    }

    private List<TravelShare> budget(OperatingPoint point) {
        return withTables ? TravelBudget.of(build.pedal(), chain, curve.pushed(point.pedalForceN())) : List.of();
    }

    private List<StopsFrom.FirstLock> firstLocks(List<LoadCaseResult> results) {
        List<StopsFrom.FirstLock> locks = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            double held = results.get(i).firstLockG(build.car().grip());
            locks.add(new StopsFrom.FirstLock(build.car().loadCases().get(i), held));
        }
        return locks;
    }

    private LoadCaseResult result(ResolvedLoadCase loadCase, AxleLoads loads) {
        Balance balance = new Balance(curve, loads);
        List<RearFirst> rearFirst = balance.rearFirst();
        return new LoadCaseResult(
                loadCase.name(),
                loadCase.mass(),
                loads.frontStatic(),
                loads.rearStatic(),
                loadCase.cgHeight(),
                RearFirst.critical(rearFirst),
                rearFirst,
                balance.lock(build.car().grip()).orElse(null),
                allLocked(loads),
                withTables ? table(loads) : List.of(),
                locks(balance));
    }

    /** With all four wheels at their grip the car slows at that grip, which sets both axle loads. */
    private @Nullable Double allLocked(AxleLoads loads) {
        double grip = build.car().grip();
        OptionalDouble front = curve.pedalForce(ChainState::frontForce, grip * loads.front(grip));
        OptionalDouble rear = curve.pedalForce(ChainState::rearForce, grip * Math.max(0, loads.rear(grip)));
        return front.isEmpty() || rear.isEmpty() ? null : Math.max(front.getAsDouble(), rear.getAsDouble());
    }

    /** Efforts of the heaviest load case at the decelerations that published rules ask for. */
    private List<EffortFor> effortsForRules() {
        double weight = Loads.of(build.car(), build.car().heaviest()).weight();
        List<EffortFor> efforts = new ArrayList<>();
        for (double demand : RULE_DECELERATIONS) {
            OptionalDouble force = curve.pedalForce(demand / Gravity.STANDARD * weight);
            efforts.add(new EffortFor(demand / Gravity.STANDARD, force.isPresent() ? force.getAsDouble() : null));
        }
        return List.copyOf(efforts);
    }

    private List<OperatingPoint> table(AxleLoads loads) {
        List<OperatingPoint> table = new ArrayList<>();
        for (double z : TENTHS) {
            OptionalDouble force = curve.pedalForce(z * loads.weight());
            if (force.isPresent()) {
                table.add(points.at(force.getAsDouble(), loads));
            }
        }
        return List.copyOf(table);
    }

    private static List<Lock> locks(Balance balance) {
        List<Lock> locks = new ArrayList<>();
        for (double grip : TENTHS) {
            Optional<Lock> lock = balance.lock(grip);
            lock.ifPresent(locks::add);
        }
        return List.copyOf(locks);
    }
}
