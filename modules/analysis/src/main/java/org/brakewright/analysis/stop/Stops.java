package org.brakewright.analysis.stop;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import org.brakewright.analysis.balance.Balance;
import org.brakewright.analysis.balance.Lock;
import org.brakewright.analysis.chain.Chain;
import org.brakewright.analysis.chain.ChainCurve;
import org.brakewright.analysis.heat.HeatedCar;
import org.brakewright.analysis.vehicle.HardStop;
import org.brakewright.analysis.vehicle.Loads;
import org.brakewright.analysis.vehicle.StopsFrom;
import org.brakewright.kernel.dynamics.PitchingBody;
import org.brakewright.kernel.ode.Precision;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.resolved.ResolvedStops;
import org.brakewright.model.vehicle.AxleEnd;
import org.jspecify.annotations.Nullable;

/** Follows the stops of a build over time. */
public final class Stops {
    /** Error allowed in each step: a tenth of a micrometre, the same per second; a hundred-millionth of each value. */
    static final Precision PRECISION = new Precision(1e-7, 1e-8);

    private final ResolvedBuild build;
    private final ResolvedStops asked;
    private final ChainCurve curve;
    private final Optional<HeatedCar> heated;
    private final Precision precision;

    Stops(ResolvedBuild build, ResolvedStops asked, ChainCurve curve, Precision precision) {
        this.build = build;
        this.asked = asked;
        this.curve = curve;
        this.heated = build.heat().map(heat -> new HeatedCar(build, heat, curve));
        this.precision = precision;
    }

    /**
     * The stops of every load case; none when the build asks for none.
     *
     * @param hardStop of the build; null when no push gives it
     */
    public static List<Stop> of(ResolvedBuild build, @Nullable HardStop hardStop) {
        if (build.stops().isEmpty()) {
            return List.of();
        }
        Chain chain = Chain.of(build);
        return of(
                build,
                chain,
                ChainCurve.of(chain),
                hardStop == null ? null : hardStop.point().pedalForceN(),
                PRECISION);
    }

    /**
     * One stop of a build in its heaviest load case.
     *
     * @param force of the pedal after its rise, N
     * @throws java.util.NoSuchElementException when the build asks for no stops
     */
    public static Stop one(ResolvedBuild build, ChainCurve curve, StopKind kind, double force) {
        Stops stops = new Stops(build, build.stops().orElseThrow(), curve, PRECISION);
        return stops.stop(kind, build.car().heaviest(), stops.grip(kind), stops.push(curve, force));
    }

    static List<Stop> of(
            ResolvedBuild build, Chain chain, ChainCurve curve, @Nullable Double hardStopForce, Precision precision) {
        return build.stops()
                .map(asked -> new Stops(build, asked, curve, precision).all(chain, hardStopForce))
                .orElse(List.of());
    }

    /** Every kind of stop in every load case, all of one load case together. */
    List<Stop> all(Chain chain, @Nullable Double hardStopForce) {
        double panic = build.aims().panicPush();
        ChainCurve frontOut = ChainCurve.of(chain.failed(AxleEnd.FRONT));
        ChainCurve rearOut = ChainCurve.of(chain.failed(AxleEnd.REAR));
        Map<StopKind, PedalRamp> pushes = new EnumMap<>(StopKind.class);
        if (hardStopForce != null) {
            pushes.put(StopKind.HARD, push(curve, hardStopForce));
        }
        pushes.put(StopKind.PANIC, push(curve, panic));
        pushes.put(StopKind.PANIC_SLIPPERY, push(curve, panic));
        pushes.put(StopKind.FRONT_OUT, push(frontOut, StopsFrom.MOST_FORCE));
        pushes.put(StopKind.REAR_OUT, push(rearOut, StopsFrom.MOST_FORCE));
        List<Supplier<Stop>> stops = new ArrayList<>();
        for (ResolvedLoadCase loadCase : build.car().loadCases()) {
            pushes.forEach((kind, push) -> stops.add(() -> stop(kind, loadCase, grip(kind), push)));
        }
        return stops.parallelStream().map(Supplier::get).toList();
    }

    private double grip(StopKind kind) {
        return kind == StopKind.PANIC_SLIPPERY
                ? asked.slipperyGrip()
                : build.car().grip();
    }

    private PedalRamp push(ChainCurve through, double force) {
        return new PedalRamp(through, force, asked.rise());
    }

    /** One stop of a push on a grip. */
    Stop stop(StopKind kind, ResolvedLoadCase loadCase, double grip, PedalRamp push) {
        StopMotion motion = new StopMotion(SlippingCars.of(build.car(), loadCase, asked, grip), body());
        double[] state = new double[StopMotion.PLACES];
        motion.start(asked.speed(), state);
        StopBrakes brakes =
                new StopBrakes(push, build.car().frontTyreRadius(), build.car().rearTyreRadius());
        StopRun run = new StopRun(motion, brakes, state, asked.peakSlip(), precision);
        Stop.Ending ending = run.run();
        Balance balance = new Balance(push.curve(), Loads.of(build.car(), loadCase));
        Optional<Lock> lock = balance.lock(grip);
        List<StopSample> samples =
                heated.map(car -> StopHeat.along(car, run.looks())).orElseGet(() -> StopHeat.plain(run.looks()));
        return new Stop(
                kind,
                loadCase.name(),
                asked.speed(),
                grip,
                push.force(),
                ending,
                run.distance(),
                run.time(),
                orNull(run.meanDeveloped()),
                run.peakDecelerationG(),
                orNull(run.frontPastPeak()),
                orNull(run.rearPastPeak()),
                orNull(run.frontLock()),
                orNull(run.rearLock()),
                lock.map(Lock::axle).orElse(null),
                lock.flatMap(first -> force(balance, first)).orElse(null),
                rise(samples, StopSample::frontRotorK),
                rise(samples, StopSample::rearRotorK),
                run.energyError(),
                samples);
    }

    private static @Nullable Double rise(List<StopSample> samples, Function<StopSample, @Nullable Double> temperature) {
        Double first = temperature.apply(samples.getFirst());
        Double last = temperature.apply(samples.getLast());
        return first == null || last == null ? null : last - first;
    }

    private static Optional<Double> force(Balance balance, Lock lock) {
        OptionalDouble force = balance.pedalForce(lock.decelerationG());
        return force.isPresent() ? Optional.of(force.getAsDouble()) : Optional.empty();
    }

    private Optional<PitchingBody> body() {
        return asked.pitch().map(pitch -> new PitchingBody(2 * Math.PI / pitch.period(), pitch.damping()));
    }

    private static @Nullable Double orNull(OptionalDouble value) {
        return value.isPresent() ? value.getAsDouble() : null;
    }
}
