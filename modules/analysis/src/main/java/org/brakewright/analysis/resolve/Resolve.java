package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.analysis.resolve.Resolution.Resolved;
import org.brakewright.analysis.resolve.Resolution.Unusable;
import org.brakewright.kernel.dynamics.AxleLift.Raised;
import org.brakewright.kernel.dynamics.CgHeight;
import org.brakewright.kernel.dynamics.Gravity;
import org.brakewright.kernel.dynamics.WeighedCar;
import org.brakewright.model.Build;
import org.brakewright.model.Given;
import org.brakewright.model.Problem;
import org.brakewright.model.hydraulics.Lines;
import org.brakewright.model.intent.Intent;
import org.brakewright.model.proof.Checks;
import org.brakewright.model.resolved.Aims;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedClutch;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.model.vehicle.AxleEnd;
import org.brakewright.model.vehicle.AxleLift;
import org.brakewright.model.vehicle.Car;
import org.brakewright.model.vehicle.LoadCase;
import org.jspecify.annotations.Nullable;

/** Completes a build: every value in SI, what is missing assumed openly, contradictions reported. */
public final class Resolve {
    private static final Checks NOTHING_CHECKED = new Checks(null, null, null, null, null, null);

    private static final Lines UNKNOWN_LINES = new Lines(null, null);

    private final Values values;

    private Resolve(Map<String, Double> overrides) {
        this.values = new Values(overrides);
    }

    /** Resolves a build as it stands. */
    public static Resolution resolve(Build build) {
        return resolve(build, Map.of());
    }

    /**
     * Resolves a build with some values replaced, which is how a cure or an assumption's range is tried.
     *
     * @param overrides SI values by key path
     */
    public static Resolution resolve(Build build, Map<String, Double> overrides) {
        Resolve resolve = new Resolve(overrides);
        ResolvedBuild resolved = resolve.build(build);
        List<Problem> problems = resolve.values.problems();
        return problems.isEmpty()
                ? new Resolved(resolved, overrides.isEmpty() ? resolve.values.ledger() : List.of())
                : new Unusable(List.copyOf(problems));
    }

    private ResolvedBuild build(Build build) {
        ResolveBrake brakes = new ResolveBrake(values);
        ResolveHydraulics hydraulics = new ResolveHydraulics(values);
        ResolveLines resolveLines = new ResolveLines(values);
        ResolveLines.Filling filling = resolveLines.filling(build.fluid());
        Lines lines = build.lines() == null ? UNKNOWN_LINES : build.lines();
        ResolvedCar car = car(build.car());
        ResolvedBrake front = brakes.brake("front", build.front());
        ResolvedBrake rear = brakes.brake("rear", build.rear());
        Optional<ResolvedMount> mount = new ResolveMount(values).mount(build.mount(), build.pedal());
        ResolvedPedal pedal = ResolvePedal.brake(values, mount).pedal(build.pedal());
        Optional<ResolvedClutch> clutch = new ResolveClutch(values).clutch(build.clutch(), filling);
        Optional<ResolvedLines> routes = new ResolvePlumbing(values).lines(build.plumbing());
        return new ResolvedBuild(
                build.name(),
                car,
                front,
                rear,
                pedal,
                hydraulics.apply(build.apply()),
                resolveLines.circuit("front", lines.front(), filling),
                resolveLines.circuit("rear", lines.rear(), filling),
                aims(build.intent()),
                build.intent().use(),
                build.intent().ruleSets(),
                build.checks() == null ? NOTHING_CHECKED : build.checks(),
                new ResolveParking(values).parking(build.parking(), front, rear),
                new ResolveHeat(values).heat(build, car, front, rear),
                clutch,
                new ResolveStops(values).stops(build.stops(), car.frontTyreRadius(), car.rearTyreRadius()),
                new ResolveShop(values).shop(build.shop()),
                mount,
                routes,
                new ResolveFootwell(values)
                        .footwell(
                                build.footwell(),
                                new ResolveFootwell.Elsewhere(
                                        pedal.travelToStop(),
                                        clutch.map(each -> OptionalDouble.of(
                                                        each.pedal().travelToStop()))
                                                .orElse(OptionalDouble.empty()),
                                        build.mount() != null && build.mount().placeInCar() != null,
                                        mount,
                                        routes)));
    }

    private ResolvedCar car(Car car) {
        double wheelbase = values.need(car.wheelbase());
        List<ResolvedLoadCase> cases = new ArrayList<>();
        for (int i = 0; i < car.loadCases().size(); i++) {
            cases.add(loadCase(car, car.loadCases().get(i), "car.load_cases[" + i + "]", wheelbase));
        }
        ResolveRoad road = new ResolveRoad(values);
        return new ResolvedCar(
                wheelbase,
                values.need(car.frontTyreRadius()),
                values.need(car.rearTyreRadius()),
                values.take(car.grip(), "car.grip", Defaults.GRIP),
                values.take(car.topSpeed(), "car.top_speed", Defaults.TOP_SPEED),
                cases,
                road.aero(car.aero(), cases),
                road.engineBraking(car.engineBraking(), cases),
                values.maybe(car.loadSensitivity()));
    }

    private ResolvedLoadCase loadCase(Car car, LoadCase loadCase, String path, double wheelbase) {
        double front = values.need(loadCase.frontAxle());
        double rear = values.need(loadCase.rearAxle());
        return new ResolvedLoadCase(loadCase.name(), front, rear, cgHeight(car, loadCase, path, wheelbase));
    }

    private double cgHeight(Car car, LoadCase loadCase, String path, double wheelbase) {
        String heightPath = path + ".cg_height";
        AxleLift lift = loadCase.axleLift();
        if (lift == null || values.overridden(heightPath)) {
            return values.take(loadCase.cgHeight(), heightPath, Defaults.cgHeight(wheelbase));
        }
        if (loadCase.cgHeight() != null) {
            values.problem(
                    heightPath,
                    loadCase.cgHeight().quantity().written(),
                    "The height of the centre of gravity is given twice, as a value and as an axle-lift measurement.",
                    "keep one of cg_height and axle_lift");
        }
        return lifted(car, loadCase, lift, path + ".axle_lift", wheelbase);
    }

    private double lifted(Car car, LoadCase loadCase, AxleLift lift, String path, double wheelbase) {
        double rise = values.need(lift.rise());
        if (rise >= 0.7 * wheelbase) {
            values.problem(
                    path + ".rise",
                    lift.rise().quantity().written(),
                    "The raised axle stands higher than 0.7 of the wheelbase, which no jack does.",
                    "less than 0.7 of the wheelbase");
            return wheelbase * 0.2;
        }
        double g = Gravity.STANDARD;
        WeighedCar weighed = new WeighedCar(
                values.need(loadCase.frontAxle()) * g,
                values.need(loadCase.rearAxle()) * g,
                wheelbase,
                values.need(car.frontTyreRadius()),
                values.need(car.rearTyreRadius()));
        double lower = values.need(lift.lowerAxle()) * g;
        if (lower >= weighed.weight()) {
            values.problem(
                    path + ".lower_axle",
                    lift.lowerAxle().quantity().written(),
                    "The lower axle alone is heavier than the whole car.",
                    "less than front_axle and rear_axle together");
            return wheelbase * 0.2;
        }
        Raised raised = lift.raised() == AxleEnd.FRONT ? Raised.FRONT : Raised.REAR;
        double height = CgHeight.fromAxleLift(
                        weighed, new org.brakewright.kernel.dynamics.AxleLift(raised, rise, lower))
                .height();
        return plausible(height, lift, path, wheelbase);
    }

    private double plausible(double height, AxleLift lift, String path, double wheelbase) {
        if (height > 0.05 && height < 0.6 * wheelbase) {
            return height;
        }
        values.problem(
                path + ".lower_axle",
                lift.lowerAxle().quantity().written(),
                String.format(
                        Locale.ROOT,
                        "This reading puts the centre of gravity %.0f mm over the ground, which no car has.",
                        height * 1000),
                "a reading that puts it between 50 mm and 0.6 of the wheelbase: weigh again, suspension locked, wheels free to roll");
        return wheelbase * 0.2;
    }

    private Aims aims(Intent intent) {
        return new Aims(
                aim(intent.hardStop(), "hard_stop", Defaults.HARD_STOP) / Gravity.STANDARD,
                aim(intent.mostEffort(), "most_effort", Defaults.MOST_EFFORT),
                aim(intent.mostTravel(), "most_travel", Defaults.MOST_TRAVEL),
                aim(intent.leastReserve(), "least_reserve", Defaults.LEAST_RESERVE),
                aim(intent.leastStrokeLeft(), "least_stroke_left", Defaults.LEAST_STROKE_LEFT),
                aim(intent.balanceMargin(), "balance_margin", Defaults.BALANCE_MARGIN),
                aim(intent.panicPush(), "panic_push", Defaults.PANIC_PUSH),
                aim(intent.airInOneCircuit(), "air_in_one_circuit", Defaults.AIR_IN_ONE_CIRCUIT));
    }

    private double aim(@Nullable Given given, String key, Default assumed) {
        return values.take(given, "intent." + key, assumed);
    }
}
