package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.brakewright.analysis.brake.ShoePair;
import org.brakewright.model.Given;
import org.brakewright.model.brake.CaliperType;
import org.brakewright.model.brake.DiscBrake;
import org.brakewright.model.brake.DrumBrake;
import org.brakewright.model.brake.WheelBrake;
import org.brakewright.model.heat.BrakeHeat;
import org.brakewright.model.heat.FrictionPoint;
import org.brakewright.model.resolved.ResolvedBrake;
import org.brakewright.model.resolved.ResolvedBrakeHeat;
import org.brakewright.model.resolved.ResolvedBrakeHeat.Lining;
import org.brakewright.model.resolved.ResolvedBrakeHeat.Point;
import org.brakewright.model.resolved.ResolvedBrakeHeat.Rotor;
import org.brakewright.model.resolved.ResolvedBrakeHeat.Vents;
import org.jspecify.annotations.Nullable;

/** Completes what heat sees of the brakes of one axle. */
final class ResolveBrakeHeat {
    private static final double LEAST_GAP = 0.05e-3;
    private static final int PARTS = 6;

    private final Values values;
    private final String path;
    private final BrakeHeat heat;

    ResolveBrakeHeat(Values values, String axle, BrakeHeat heat) {
        this.values = values;
        this.path = "heat." + axle + ".";
        this.heat = heat;
    }

    ResolvedBrakeHeat brake(WheelBrake written, ResolvedBrake resolved) {
        return switch (resolved) {
            case ResolvedBrake.Disc disc -> disc(written, disc);
            case ResolvedBrake.Drum drum -> drum(written, drum);
        };
    }

    private ResolvedBrakeHeat disc(WheelBrake written, ResolvedBrake.Disc brake) {
        refuse(heat.drumWidth(), "drum_width", "a disc");
        boolean fixed = written instanceof DiscBrake disc && disc.caliper() == CaliperType.FIXED;
        ResolvedBrakeHeat.Disc rotor = discRotor(brake.effectiveRadius());
        double area = take(heat.liningArea(), "lining_area", HeatDefaults.padArea(rotor.sweptArea() / 2));
        Working working = new Working(brake.friction(), brake.frictionStates().hot(), mu -> mu / brake.friction());
        return completed(
                rotor,
                lining(area, HeatDefaults.PAD_THICKNESS, working),
                (fixed ? 2 : 1) * brake.pistonArea(),
                brake.runningClearance());
    }

    private ResolvedBrakeHeat.Disc discRotor(double radius) {
        double diameter = take(heat.outerDiameter(), "outer_diameter", HeatDefaults.discDiameter(radius));
        double inner = 4 * radius - diameter;
        if (diameter <= 2 * radius || inner <= 0) {
            problem(
                    "outer_diameter",
                    heat.outerDiameter(),
                    "A disc of this diameter cannot be rubbed at the pads' effective radius.",
                    "between two and four times the effective radius");
            diameter = 2.4 * radius;
            inner = 1.6 * radius;
        }
        boolean vented = heat.ventGap() != null;
        double thickness = take(
                heat.thickness(), "thickness", vented ? HeatDefaults.VENTED_THICKNESS : HeatDefaults.DISC_THICKNESS);
        Optional<Vents> vents = vents(thickness);
        double iron = thickness - vents.map(v -> 0.8 * v.gap()).orElse(0.0);
        double ring = Math.PI / 4 * (diameter * diameter - inner * inner) * iron;
        return new ResolvedBrakeHeat.Disc(
                take(heat.rotorMass(), "rotor_mass", HeatDefaults.discMass(ring)),
                diameter,
                inner,
                thickness,
                vents,
                take(heat.emissivity(), "emissivity", HeatDefaults.EMISSIVITY),
                take(heat.rotorLimit(), "rotor_limit", HeatDefaults.ROTOR_LIMIT));
    }

    private Optional<Vents> vents(double thickness) {
        Given gap = heat.ventGap();
        if (gap == null) {
            refuse(heat.ventCount(), "vent_count", "a disc without vent_gap");
            return Optional.empty();
        }
        double width = values.need(gap);
        if (width >= 0.8 * thickness) {
            problem("vent_gap", gap, "The air gap leaves no iron for the cheeks.", "less than 0.8 of the thickness");
            width = 0.4 * thickness;
        }
        return Optional.of(new Vents(width, take(heat.ventCount(), "vent_count", HeatDefaults.VENT_COUNT)));
    }

    private ResolvedBrakeHeat drum(WheelBrake written, ResolvedBrake.Drum brake) {
        refuse(heat.thickness(), "thickness", "a drum");
        refuse(heat.ventGap(), "vent_gap", "a drum");
        refuse(heat.ventCount(), "vent_count", "a drum");
        double width = take(heat.drumWidth(), "drum_width", HeatDefaults.DRUM_WIDTH);
        double radius = brake.drumRadius();
        double diameter = take(heat.outerDiameter(), "outer_diameter", HeatDefaults.drumDiameter(radius));
        if (diameter <= 2 * radius) {
            problem("outer_diameter", heat.outerDiameter(), "The drum is smaller than its bore.", "more than the bore");
        }
        Rotor rotor = new ResolvedBrakeHeat.Drum(
                take(heat.rotorMass(), "rotor_mass", HeatDefaults.drumMass(diameter, width)),
                diameter,
                radius,
                width,
                take(heat.emissivity(), "emissivity", HeatDefaults.EMISSIVITY),
                take(heat.rotorLimit(), "rotor_limit", HeatDefaults.ROTOR_LIMIT));
        double area = take(heat.liningArea(), "lining_area", HeatDefaults.shoeArea(rotor.sweptArea()));
        return completed(
                rotor,
                lining(area, HeatDefaults.SHOE_THICKNESS, working(written, brake)),
                2 * brake.wheelCylinderArea(),
                brake.shoeMovement());
    }

    /** From the shoes' geometry when it is known; otherwise the factor is taken to follow the friction in proportion. */
    private static Working working(WheelBrake written, ResolvedBrake.Drum brake) {
        double hot = brake.frictionStates().hot();
        if (brake.shoes().isPresent()) {
            ShoePair shoes = ShoePair.of(brake.shoes().get());
            return new Working(
                    brake.shoes().get().friction(),
                    hot,
                    mu -> ShoePair.reckoned(shoes.forward(mu)) / brake.brakeFactor());
        }
        double friction = written instanceof DrumBrake drum && drum.liningFriction() != null
                ? drum.liningFriction().si()
                : Defaults.LINING_FRICTION.value();
        return new Working(friction, hot, mu -> mu / friction);
    }

    private ResolvedBrakeHeat completed(Rotor rotor, Lining lining, double pistonArea, double gap) {
        return new ResolvedBrakeHeat(
                rotor,
                lining,
                pistonArea,
                take(heat.housingMass(), "housing_mass", HeatDefaults.HOUSING_MASS),
                take(heat.pistonHeatTransfer(), "piston_heat_transfer", HeatDefaults.PISTON_TRANSFER),
                take(heat.airflow(), "airflow", HeatDefaults.AIRFLOW),
                Math.max(gap, LEAST_GAP));
    }

    /**
     * How friction makes force.
     *
     * @param friction working
     * @param hot force hot over force working
     * @param force over that of the working brake, by friction
     */
    private record Working(double friction, double hot, DoubleUnaryOperator force) {}

    private Lining lining(double area, Default thickness, Working working) {
        double limit = take(heat.liningLimit(), "lining_limit", HeatDefaults.LINING_LIMIT);
        List<FrictionPoint> given = heat.frictionCurve();
        return new Lining(
                area,
                take(heat.liningThickness(), "lining_thickness", thickness),
                limit,
                given == null || given.isEmpty() ? assumedCurve(limit, working) : curve(given, working),
                given != null && !given.isEmpty());
    }

    /** Friction as it works up to a temperature, then falling to the hot friction at the limit. */
    private List<Point> assumedCurve(double limit, Working working) {
        double from = take(heat.fadeFrom(), "fade_from", HeatDefaults.FADE_FROM);
        double start = Math.min(from, limit - 1);
        if (from >= limit && heat.fadeFrom() != null) {
            problem(
                    "fade_from",
                    heat.fadeFrom(),
                    "Friction falls before the lining is at its limit.",
                    "less than lining_limit");
        }
        return List.of(new Point(start, 1), new Point(limit, working.hot()));
    }

    private List<Point> curve(List<FrictionPoint> given, Working working) {
        refuse(heat.fadeFrom(), "fade_from", "a friction_curve");
        List<Point> points = new ArrayList<>();
        double lastT = 0;
        double lastMu = 0;
        for (FrictionPoint point : given) {
            double temperature = values.need(point.temperature());
            double friction = values.need(point.friction());
            if (temperature <= lastT) {
                values.problem(
                        point.temperature().path(),
                        Values.written(point.temperature()),
                        "The points of the friction curve do not rise in temperature.",
                        "more than the point before");
                return List.of(new Point(300, 1));
            }
            between(points, new Point(lastT, lastMu), new Point(temperature, friction), working);
            lastT = temperature;
            lastMu = friction;
        }
        return List.copyOf(points);
    }

    /** Between two points of friction the force of shoes is curved: some points more. */
    private static void between(List<Point> points, Point from, Point to, Working working) {
        int first = points.isEmpty() ? PARTS : 1;
        for (int part = first; part <= PARTS; part++) {
            double share = (double) part / PARTS;
            double friction = from.force() + share * (to.force() - from.force());
            points.add(new Point(
                    from.temperature() + share * (to.temperature() - from.temperature()),
                    working.force().applyAsDouble(friction)));
        }
    }

    private double take(@Nullable Given given, String key, Default assumed) {
        return values.take(given, path + key, assumed);
    }

    private void refuse(@Nullable Given given, String key, String where) {
        if (given != null) {
            problem(key, given, "This has no place with " + where + ".", "leave it out");
        }
    }

    private void problem(String key, @Nullable Given given, String message, String allowed) {
        values.problem(path + key, Values.written(given), message, allowed);
    }
}
