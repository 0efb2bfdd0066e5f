package org.brakewright.analysis.resolve;

import java.util.List;
import org.brakewright.analysis.lines.Places;
import org.brakewright.analysis.lines.TubeState.Gap;
import org.brakewright.analysis.lines.TubeStates;
import org.brakewright.kernel.tubing.BendTable;
import org.brakewright.kernel.tubing.CentreLine;
import org.brakewright.kernel.tubing.Point;
import org.brakewright.model.Given;
import org.brakewright.model.resolved.ResolvedLines;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;
import org.brakewright.model.resolved.ResolvedLines.Shape;
import org.brakewright.model.resolved.ResolvedLines.Tube;

/** Looks for what keeps one tube from being bent or laid. */
final class RouteFaults {
    /** From the end of a tube to where its part stands, m: a part is no larger. */
    static final double REACH = 0.3;

    /** Points nearer to each other are one point, m. */
    private static final double ONE_POINT = 0.1e-3;

    /** A corner that turns less is no corner, rad. */
    private static final double NO_TURN = Math.toRadians(0.1);

    private static final double SLIP = 1e-9;

    private final Values values;
    private final ResolvedLines lines;

    RouteFaults(Values values, ResolvedLines lines) {
        this.values = values;
        this.lines = lines;
    }

    /** Reports all faults of one tube. */
    void report(String path, org.brakewright.model.lines.Tube told, Tube tube) {
        int before = values.problems().size();
        if (2 * tube.wall() >= tube.outsideDiameter()) {
            values.problem(
                    path + ".wall",
                    written(told.wall()),
                    "The tube's wall leaves no bore.",
                    "less than half the outside");
        }
        if (tube.points().size() < 2) {
            values.problem(
                    path + ".points", "1 point", tube.name() + " has no other end.", "two points or more, both ends");
        }
        radii(path, told, tube);
        corners(path, tube);
        if (values.problems().size() == before) {
            bent(path, tube);
        }
    }

    private void radii(String path, org.brakewright.model.lines.Tube told, Tube tube) {
        for (int i = 0; i < told.points().size(); i++) {
            Given radius = told.points().get(i).bendRadius();
            boolean inner = i > 0 && i < told.points().size() - 1;
            String at = path + ".points[" + i + "].bend_radius";
            if (radius != null && !inner) {
                values.problem(at, written(radius), "An end of a tube has no bend.", "leave bend_radius out");
            } else if (radius != null
                    && tube.radii().get(i - 1) < lines.bender().radius() - SLIP) {
                values.problem(
                        at,
                        written(radius),
                        "Your bender cannot bend " + tube.name() + " as tightly as this.",
                        "plumbing.bender.radius, " + millimetres(lines.bender().radius()) + ", or more");
            }
        }
    }

    private void corners(String path, Tube tube) {
        List<Point> points = tube.points().stream().map(Places::point).toList();
        for (int i = 1; i < points.size(); i++) {
            Point in = points.get(i).minus(points.get(i - 1));
            if (in.length() < ONE_POINT) {
                values.problem(
                        path + ".points[" + i + "]",
                        place(points.get(i)),
                        "Two points lie on each other.",
                        "one of them");
            } else if (i + 1 < points.size()) {
                turn(path + ".points[" + i + "]", in, points.get(i + 1).minus(points.get(i)), points.get(i));
            }
        }
    }

    private void turn(String path, Point in, Point out, Point at) {
        double angle = Math.atan2(in.cross(out).length(), in.dot(out));
        if (out.length() >= ONE_POINT && angle < NO_TURN) {
            values.problem(
                    path, place(at), "The tube does not turn here.", "only ends and corners; leave this point out");
        } else if (angle > Math.PI - NO_TURN) {
            values.problem(path, place(at), "The tube turns back on itself here.", "a corner of less than 180 degrees");
        }
    }

    private void bent(String path, Tube tube) {
        BendTable table = BendTable.of(Places.route(tube));
        List<Double> straights = table.straights();
        for (int i = 0; i < straights.size(); i++) {
            if (straights.get(i) < -SLIP) {
                values.problem(
                        path + ".points[" + i + "]",
                        place(Places.point(tube.points().get(i))),
                        "There is no room for the bends at both ends of the leg that begins here: "
                                + millimetres(-straights.get(i)) + " are lacking.",
                        "points further apart or smaller radii");
                return;
            }
        }
        length(path, tube, table);
        obstacles(path, tube);
    }

    private void length(String path, Tube tube, BendTable table) {
        double cut = TubeStates.cutLength(table, lines.flareAllowance());
        double longest =
                lines.stocks().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        if (cut > longest) {
            values.problem(
                    path,
                    millimetres(cut),
                    tube.name() + " is longer than any tube you buy.",
                    "up to " + millimetres(longest) + ", or a longer entry of plumbing.stock_lengths");
        }
        for (int i = 0; i < tube.clips().size(); i++) {
            if (tube.clips().get(i) > table.developedLength()) {
                values.problem(
                        path + ".clips[" + i + "]",
                        millimetres(tube.clips().get(i)),
                        "The clip sits beyond the end of " + tube.name() + ".",
                        "up to " + millimetres(table.developedLength()));
            }
        }
    }

    private void obstacles(String path, Tube tube) {
        CentreLine middle = CentreLine.of(Places.route(tube));
        for (Obstacle obstacle : lines.obstacles()) {
            boolean room = obstacle.shape() != Shape.BOX ? roomy(obstacle) : boxy(obstacle);
            Gap gap = room ? TubeStates.gap(tube, middle, obstacle) : null;
            if (gap != null && gap.gapM() < -SLIP) {
                values.problem(
                        path + ".points",
                        tube.name(),
                        tube.name() + " runs " + millimetres(-gap.gapM()) + " into " + obstacle.name() + ", "
                                + millimetres(gap.alongM()) + " from its start, at "
                                + place(Places.point(gap.at())) + ".",
                        "a route round it");
            }
        }
    }

    private static boolean roomy(Obstacle obstacle) {
        return obstacle.shape() == Shape.SPHERE || obstacle.from().to(obstacle.to()) > 0;
    }

    private static boolean boxy(Obstacle box) {
        return box.from().x() != box.to().x()
                && box.from().y() != box.to().y()
                && box.from().z() != box.to().z();
    }

    /** "12.5 mm". */
    static String millimetres(double metre) {
        return Math.round(metre * 1e4) / 10.0 + " mm";
    }

    private static String place(Point point) {
        return millimetres(point.x()) + " forward, " + millimetres(point.y()) + " left, " + millimetres(point.z())
                + " up";
    }

    private static String written(Given given) {
        return given.quantity().written();
    }
}
