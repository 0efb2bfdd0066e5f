package org.brakewright.analysis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.brakewright.model.brake.ShoeArrangement;
import org.brakewright.model.hydraulics.Chamber;
import org.brakewright.model.hydraulics.CircuitSplit;
import org.brakewright.model.intent.Use;
import org.brakewright.model.proof.Checks;
import org.brakewright.model.resolved.Aims;
import org.brakewright.model.resolved.ResolvedApply;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.model.resolved.ResolvedApply.Boost;
import org.brakewright.model.resolved.ResolvedApply.Master;
import org.brakewright.model.resolved.ResolvedApply.Metering;
import org.brakewright.model.resolved.ResolvedApply.Stance;
import org.brakewright.model.resolved.ResolvedApply.Valve;
import org.brakewright.model.resolved.ResolvedApply.Valves;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBrake.FrictionStates;
import org.brakewright.model.resolved.ResolvedBuild;
import org.brakewright.model.resolved.ResolvedCar;
import org.brakewright.model.resolved.ResolvedCar.Aero;
import org.brakewright.model.resolved.ResolvedCar.EngineBraking;
import org.brakewright.model.resolved.ResolvedCircuit;
import org.brakewright.model.resolved.ResolvedCircuit.Reservoir;
import org.brakewright.model.resolved.ResolvedLoadCase;
import org.brakewright.model.resolved.ResolvedPedal;
import org.brakewright.model.vehicle.AxleEnd;

/** Builds drawn at random from a fixed seed, within what cars and their parts can be; good and bad layouts alike. */
public final class RandomCars {
    private static final long SEED = 20_240_229;

    private final SplittableRandom random = new SplittableRandom(SEED);

    private RandomCars() {}

    /** So many builds, one after the other; a failure names the number of its build. */
    public static void each(int count, Consumer<Rig> check) {
        RandomCars cars = new RandomCars();
        for (int i = 0; i < count; i++) {
            Rig rig = new Rig(cars.build());
            try {
                check.accept(rig);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("random build " + i + ": " + rig.build(), e);
            }
        }
    }

    private ResolvedBuild build() {
        return new ResolvedBuild(
                "drawn",
                car(),
                brake(),
                brake(),
                new ResolvedPedal(
                        in(2.5, 8),
                        in(0, 6e-3),
                        in(0.08, 0.2),
                        in(0.7, 1),
                        in(1e5, 1e6),
                        in(5e5, 3e6),
                        some(in(0, 4e-4)),
                        Optional.empty(),
                        Optional.empty()),
                random.nextBoolean() ? twin() : tandem(),
                circuit(),
                circuit(),
                new Aims(in(0.5, 1.1), in(200, 600), in(0.04, 0.09), 0.2, 0.15, 0.05, in(800, 2000), 0.05),
                Use.ROAD,
                List.of(),
                new Checks(null, null, null, null, null, null),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Wheelbases and heights with which the rear stays down to 1.25 g. */
    private ResolvedCar car() {
        double wheelbase = in(2, 3.2);
        double mass = in(500, 1900);
        double height = in(0.14, 0.24) * wheelbase;
        double rear = in(0.38, 0.6);
        double load = in(0, 400);
        return new ResolvedCar(
                wheelbase,
                in(0.26, 0.36),
                in(0.26, 0.38),
                in(0.3, 1.2),
                in(30, 60),
                List.of(
                        new ResolvedLoadCase("light", mass * (1 - rear), mass * rear, height),
                        new ResolvedLoadCase(
                                "loaded", mass * (1 - rear) + 0.2 * load, mass * rear + 0.8 * load, height)),
                air(mass * 9.81),
                engine(mass),
                sensitivity());
    }

    private Optional<Aero> air(double weight) {
        return random.nextBoolean()
                ? Optional.of(new Aero(in(20, 60), in(-0.1, 0.3) * weight, in(-0.1, 0.4) * weight, in(0, 0.4) * weight))
                : Optional.empty();
    }

    /** Rarely any: load-sensitive tyres are slow to compute, since they make curves of lines. */
    private OptionalDouble sensitivity() {
        double drawn = random.nextBoolean() ? in(0, 0.3) : 0;
        return drawn > 0.2 ? OptionalDouble.of(drawn - 0.1) : OptionalDouble.empty();
    }

    private Optional<EngineBraking> engine(double mass) {
        return random.nextBoolean()
                ? Optional.of(new EngineBraking(random.nextBoolean() ? AxleEnd.FRONT : AxleEnd.REAR, in(0, 1.5) * mass))
                : Optional.empty();
    }

    private ResolvedBrake brake() {
        return random.nextInt(3) > 0
                ? new ResolvedBrake.Disc(
                        in(8e-4, 50e-4),
                        in(0.25, 0.6),
                        in(0.08, 0.14),
                        some(in(0, 1e5)),
                        some(in(0, 3e-4)),
                        some(in(0, 2e-4)),
                        some(in(0, 5e-11)),
                        some(in(0, 1e-11)),
                        some(in(0, 5e-5)),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        states())
                : new ResolvedBrake.Drum(
                        in(2, 5),
                        in(2e-4, 5e-4),
                        in(0.09, 0.14),
                        some(in(0, 5e5)),
                        some(in(0, 2e-3)),
                        some(in(0, 8e-11)),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        OptionalDouble.empty(),
                        ShoeArrangement.LEADING_TRAILING,
                        Optional.empty(),
                        states());
    }

    private FrictionStates states() {
        return new FrictionStates(in(0.7, 1.1), in(0.5, 1), in(0.4, 1.1));
    }

    private ResolvedApply twin() {
        double spacing = in(0.05, 0.08);
        double limit = spacing / 6;
        return new ResolvedApply.Twin(
                master(in(0.02, 0.036)),
                master(in(0.02, 0.036)),
                new Bar(
                        spacing,
                        in(-limit, limit),
                        1e-3,
                        limit,
                        in(0.1, 0.5),
                        stance(spacing),
                        OptionalDouble.empty(),
                        Optional.empty()),
                valves());
    }

    private ResolvedApply tandem() {
        double primary = in(0.012, 0.02);
        double secondary = in(0.012, 0.02);
        return new ResolvedApply.Tandem(
                master(primary + secondary),
                random.nextInt(4) == 0 ? CircuitSplit.DIAGONAL : CircuitSplit.FRONT_REAR,
                random.nextBoolean() ? Chamber.PRIMARY : Chamber.SECONDARY,
                primary,
                secondary,
                random.nextBoolean()
                        ? Optional.of(new Boost(in(1.5, 5), in(0.02, 0.06), in(3e4, 7e4), some(in(0, 80)), in(0.9, 1)))
                        : Optional.empty(),
                valves());
    }

    private Master master(double stroke) {
        double bore = in(0.015, 0.03);
        return new Master(
                bore,
                Math.PI / 4 * bore * bore,
                stroke,
                some(in(0, 2e-3)),
                some(in(0, 60)),
                some(in(0, 3e3)),
                some(in(0, 20)),
                OptionalDouble.empty());
    }

    private Stance stance(double spacing) {
        return random.nextBoolean()
                ? Stance.square(spacing)
                : new Stance(in(-3e-3, 3e-3), in(-5e-3, 5e-3), in(0.06, 0.13), spacing + in(-6e-3, 6e-3));
    }

    private Valves valves() {
        return new Valves(
                random.nextInt(3) == 0 ? Optional.of(valve()) : Optional.empty(),
                random.nextInt(8) == 0 ? Optional.of(valve()) : Optional.empty(),
                random.nextInt(6) == 0 ? Optional.of(metering()) : Optional.empty());
    }

    private Valve valve() {
        AxleEnd line = random.nextInt(6) == 0 ? AxleEnd.FRONT : AxleEnd.REAR;
        return new Valve(some(in(0, 5e6)), some(in(0, 1)), line, random.nextBoolean());
    }

    private Metering metering() {
        double opening = some(in(0, 1e6));
        return new Metering(opening, opening + in(1e5, 3e6));
    }

    private ResolvedCircuit circuit() {
        return new ResolvedCircuit(
                some(in(0, 6)),
                4.75e-3,
                0.71e-3,
                205e9,
                some(in(0, 1)),
                in(0.4e-6, 2.6e-6),
                in(1e-5, 5e-5),
                in(1.1e9, 2e9),
                some(in(0, 5e-3)),
                random.nextInt(3) == 0 ? OptionalDouble.of(in(1e4, 8e4)) : OptionalDouble.empty(),
                new Reservoir(OptionalDouble.empty(), OptionalDouble.empty()));
    }

    private double in(double low, double high) {
        return random.nextDouble(low, high);
    }

    /** The value, or nothing in one of four cases. */
    private double some(double value) {
        return random.nextInt(4) == 0 ? 0 : value;
    }
}
