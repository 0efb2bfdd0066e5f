package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.brakewright.model.footwell.FootPedal;
import org.brakewright.model.footwell.Footwell;
import org.brakewright.model.resolved.ResolvedFootwell;
import org.brakewright.model.resolved.ResolvedFootwell.FootPad;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedMount;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.jspecify.annotations.Nullable;

/** Completes the pedals side by side. */
final class ResolveFootwell {
    /** A pad nearer to its pivot swings, but no foot could work it, m. */
    private static final double SHORTEST = 0.05;

    private static final Default ARM =
            Default.practice(0.016, 0.010, 0.030, "flat bars of 10 to 12 mm, with bolt heads to 30 mm");

    private final Values values;
    private final ResolveObstacle obstacles;

    ResolveFootwell(Values values) {
        this.values = values;
        this.obstacles = new ResolveObstacle(values);
    }

    /**
     * What else of the car tells of its pedals.
     *
     * @param brakeTravel of the pad, m
     * @param clutchTravel of the pad, m; empty without a clutch
     * @param placed whether a mount is told to lie in the car, faulty or not
     */
    record Elsewhere(
            double brakeTravel,
            OptionalDouble clutchTravel,
            boolean placed,
            Optional<ResolvedMount> mount,
            Optional<ResolvedLines> lines) {}

    /** The footwell; empty when not given or when it has faults. */
    Optional<ResolvedFootwell> footwell(@Nullable Footwell told, Elsewhere elsewhere) {
        if (told == null) {
            return Optional.empty();
        }
        int before = values.problems().size();
        Optional<FootPad> brake = brake(told.brake(), elsewhere);
        Optional<FootPad> clutch = Optional.ofNullable(told.clutch())
                .flatMap(pedal -> pad(pedal, "footwell.clutch", clutchTravel(pedal, elsewhere.clutchTravel())));
        Optional<FootPad> throttle =
                pad(told.throttle(), "footwell.throttle", travel(told.throttle(), "footwell.throttle"));
        List<ResolvedLines.Obstacle> around = around(told, elsewhere);
        if (values.problems().size() > before || brake.isEmpty() || throttle.isEmpty()) {
            return Optional.empty();
        }
        ResolvedFootwell footwell = new ResolvedFootwell(
                brake.get(),
                clutch,
                throttle.get(),
                values.take(told.arm(), "footwell.arm", ARM),
                values.maybe(told.leftWall()),
                values.maybe(told.rightWall()),
                around,
                told.driver(),
                told.shoe(),
                Boolean.TRUE.equals(told.heelAndToe()));
        boolean sound = values.anyOverridden() || new FootwellFaults(values, footwell).none();
        return sound ? Optional.of(footwell) : Optional.empty();
    }

    private List<ResolvedLines.Obstacle> around(Footwell told, Elsewhere elsewhere) {
        List<ResolvedLines.Obstacle> all = new ArrayList<>();
        if (told.obstacles() != null) {
            for (int i = 0; i < told.obstacles().size(); i++) {
                ResolvedLines.Obstacle obstacle =
                        obstacles.obstacle(told.obstacles().get(i));
                obstacles.report("footwell.obstacles[" + i + "]", obstacle);
                all.add(obstacle);
            }
        }
        elsewhere.lines().ifPresent(lines -> all.addAll(lines.obstacles()));
        return all;
    }

    private Optional<FootPad> brake(FootPedal told, Elsewhere elsewhere) {
        if (told.travel() != null) {
            values.problem(
                    "footwell.brake.travel",
                    Values.written(told.travel()),
                    "How far the brake pedal goes is told twice, here and by pedal.travel_to_stop.",
                    "keep pedal.travel_to_stop");
        }
        double travel = elsewhere.brakeTravel();
        Optional<Place> zero = elsewhere.mount().flatMap(ResolvedMount::placeInCar);
        boolean here = told.pivot() != null || told.pad() != null;
        if (elsewhere.placed() && zero.isEmpty()) {
            return Optional.empty();
        }
        if (zero.isEmpty()) {
            return pad(told, "footwell.brake", OptionalDouble.of(travel));
        }
        if (here) {
            values.problem(
                    "footwell.brake",
                    "",
                    "Where the brake pedal lies is told twice, here and by the mount that is placed in the car.",
                    "keep mount and mount.place_in_car");
            return Optional.empty();
        }
        ResolvedMount.PedalPoints points = elsewhere.mount().orElseThrow().pedal();
        return Optional.of(new FootPad(
                values.need(told.breadth()),
                values.need(told.height()),
                moved(points.pivot(), zero.get()),
                moved(points.pad(), zero.get()),
                travel));
    }

    private static Place moved(Place place, Place zero) {
        return new Place(place.x() + zero.x(), place.y() + zero.y(), place.z() + zero.z());
    }

    private OptionalDouble clutchTravel(FootPedal told, OptionalDouble known) {
        if (known.isEmpty()) {
            return travel(told, "footwell.clutch");
        }
        if (told.travel() != null) {
            values.problem(
                    "footwell.clutch.travel",
                    Values.written(told.travel()),
                    "How far the clutch pedal goes is told twice, here and by clutch.pedal.travel_to_stop.",
                    "keep clutch.pedal.travel_to_stop");
        }
        return known;
    }

    private OptionalDouble travel(FootPedal told, String path) {
        if (told.travel() == null) {
            values.problem(
                    path + ".travel", "", "How far this pedal goes is told nowhere.", "10 mm to 300 mm, at the pad");
        }
        return values.maybe(told.travel());
    }

    private Optional<FootPad> pad(FootPedal told, String path, OptionalDouble travel) {
        if (told.pivot() == null || told.pad() == null) {
            values.problem(
                    path,
                    "",
                    "Where this pedal lies is not told.",
                    path.endsWith("brake") ? "pivot and pad, or a mount with mount.place_in_car" : "pivot and pad");
            return Optional.empty();
        }
        Place pivot = place(obstacles.spot(told.pivot()));
        Place pad = place(obstacles.spot(told.pad()));
        if (Math.hypot(pad.x() - pivot.x(), pad.z() - pivot.z()) < SHORTEST) {
            values.problem(
                    path + ".pad", "", "The pad lies within 50 mm of its pivot, seen from the side.", "further away");
        }
        return travel.isEmpty()
                ? Optional.empty()
                : Optional.of(new FootPad(
                        values.need(told.breadth()), values.need(told.height()), pivot, pad, travel.getAsDouble()));
    }

    private static Place place(ResolvedLines.Spot spot) {
        return new Place(spot.x(), spot.y(), spot.z());
    }
}
