package org.brakewright.analysis.resolve;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.brakewright.analysis.clutch.ReleaseCover;
import org.brakewright.model.Given;
import org.brakewright.model.clutch.Clutch;
import org.brakewright.model.clutch.Cover;
import org.brakewright.model.clutch.Diaphragm;
import org.brakewright.model.clutch.Plate;
import org.brakewright.model.clutch.ReleasePoint;
import org.brakewright.model.clutch.ReleasePoints;
import org.brakewright.model.clutch.SpringDimensions;
import org.brakewright.model.resolved.ResolvedClutch;
import org.brakewright.model.resolved.ResolvedClutch.Spring;
import org.brakewright.quantity.QuantityWriter;
import org.brakewright.quantity.Unit;

/** Completes the clutch's cover and plate. */
final class ResolveCover {
    private static final String PATH = "clutch.cover";
    private static final String DIAPHRAGM = PATH + ".diaphragm";
    private static final Cover UNKNOWN = new Cover(null, null, null, null, null, null);
    private static final double ANY_TRAVEL = 0.01;

    private final Values values;

    ResolveCover(Values values) {
        this.values = values;
    }

    ResolvedClutch.Plate plate(Plate plate) {
        double outer = values.need(plate.outerDiameter());
        double inner = values.need(plate.innerDiameter());
        if (inner >= outer) {
            values.problem(
                    "clutch.plate.inner_diameter",
                    Values.written(plate.innerDiameter()),
                    "The hole of the facing is not smaller than the facing.",
                    "less than outer_diameter, " + Values.written(plate.outerDiameter()));
        }
        return new ResolvedClutch.Plate(
                outer / 2,
                inner / 2,
                values.take(plate.friction(), "clutch.plate.friction", ClutchDefaults.FRICTION),
                faces(plate),
                values.take(plate.wear(), "clutch.plate.wear", ClutchDefaults.WEAR),
                values.take(plate.clearance(), "clutch.plate.clearance", ClutchDefaults.CLEARANCE));
    }

    private int faces(Plate plate) {
        double faces = values.take(plate.faces(), "clutch.plate.faces", ClutchDefaults.FACES);
        if (faces != 2 * Math.rint(faces / 2)) {
            values.problem(
                    "clutch.plate.faces",
                    Values.written(plate.faces()),
                    "Each plate rubs on both its sides, so faces come in pairs.",
                    "2, 4, 6 and so on");
        }
        return (int) Math.rint(faces);
    }

    ResolvedClutch.Cover cover(Clutch clutch, ResolvedClutch.Plate plate) {
        Cover cover = clutch.cover() == null ? UNKNOWN : clutch.cover();
        OptionalDouble clamp = values.maybe(cover.clampLoad());
        int faults = values.problems().size();
        Spring spring = spring(clutch.plate(), cover, clamp, plate);
        boolean sound = values.problems().size() == faults;
        OptionalDouble travel = releaseTravel(cover, spring);
        ResolvedClutch.Cover known = new ResolvedClutch.Cover(spring, clamp, travel, 0);
        double needed = ReleaseCover.of(known, plate, 0).needed(known, plate);
        return new ResolvedClutch.Cover(spring, clamp, travel, most(cover, needed, sound));
    }

    private OptionalDouble releaseTravel(Cover cover, Spring spring) {
        String path = PATH + ".release_travel";
        return switch (spring) {
            case Spring.Load load ->
                OptionalDouble.of(values.take(cover.releaseTravel(), path, ClutchDefaults.RELEASE_TRAVEL));
            case Spring.Points points -> values.maybe(cover.releaseTravel());
            case Spring.Dimensions dimensions -> values.maybe(cover.releaseTravel());
        };
    }

    private double most(Cover cover, double needed, boolean sound) {
        String path = PATH + ".most_bearing_travel";
        double most = values.take(cover.mostBearingTravel(), path, ClutchDefaults.mostBearingTravel(needed));
        if (sound && most <= needed) {
            values.problem(
                    path,
                    Values.written(cover.mostBearingTravel()),
                    "The cover allows no more bearing travel than it needs to free the plate.",
                    "more than the travel that frees it, " + QuantityWriter.write(needed, Unit.MILLIMETRE));
        }
        return most;
    }

    private Spring spring(Plate plate, Cover cover, OptionalDouble clamp, ResolvedClutch.Plate resolved) {
        Diaphragm diaphragm = cover.diaphragm();
        if (diaphragm != null && cover.releaseLoad() != null) {
            twice(".release_load", cover.releaseLoad(), "The force at the bearing", "release_load");
        }
        return switch (diaphragm) {
            case null -> load(cover, clamp);
            case ReleasePoints points -> points(points, cover);
            case SpringDimensions dimensions -> dimensions(dimensions, cover, plate, resolved.wear());
        };
    }

    private void twice(String key, Given given, String what, String name) {
        values.problem(
                PATH + key,
                given.quantity().written(),
                what + " is given twice, as a value and by the diaphragm.",
                "one of " + name + " and diaphragm");
    }

    private Spring load(Cover cover, OptionalDouble clamp) {
        double ratio = fingerRatio(cover);
        Default load = clamp.isPresent()
                ? ClutchDefaults.releaseLoad(clamp.getAsDouble(), ratio)
                : ClutchDefaults.RELEASE_LOAD;
        return new Spring.Load(values.take(cover.releaseLoad(), PATH + ".release_load", load), ratio);
    }

    private double fingerRatio(Cover cover) {
        return values.take(cover.fingerRatio(), PATH + ".finger_ratio", ClutchDefaults.FINGER_RATIO);
    }

    private Spring points(ReleasePoints given, Cover cover) {
        List<Spring.Point> points = new ArrayList<>();
        double before = 0;
        for (int i = 0; i < given.points().size(); i++) {
            ReleasePoint point = given.points().get(i);
            double travel = values.need(point.travel());
            if (travel <= before) {
                values.problem(
                        DIAPHRAGM + ".points[" + i + "].travel",
                        Values.written(point.travel()),
                        "The points do not stand in the order of their travel.",
                        "more than the travel of the point before");
            }
            before = travel > before ? travel : before + ANY_TRAVEL;
            points.add(new Spring.Point(before, values.need(point.force())));
        }
        return new Spring.Points(checked(points), fingerRatio(cover));
    }

    private List<Spring.Point> checked(List<Spring.Point> points) {
        boolean pushes = points.stream().anyMatch(point -> point.force() > 0);
        if (points.size() >= 2 && pushes) {
            return points;
        }
        values.problem(
                DIAPHRAGM + ".points",
                points.size() + (points.size() == 1 ? " point" : " points"),
                pushes
                        ? "One point is no curve; give release_load when that is all you know."
                        : "No point has a force, so nothing would hold the plate.",
                "at least two points, one of them with a force");
        return List.of(new Spring.Point(ANY_TRAVEL, 1));
    }

    private Spring dimensions(SpringDimensions given, Cover cover, Plate plate, double wear) {
        if (cover.fingerRatio() != null) {
            twice(".finger_ratio", cover.fingerRatio(), "The finger ratio", "finger_ratio");
        }
        return new ResolveDiaphragm(values, DIAPHRAGM).spring(given, plate.cushionTravel(), wear);
    }
}
