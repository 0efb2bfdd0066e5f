package org.brakewright.analysis.footwell;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.brakewright.analysis.footwell.FootwellState.SweepState;
import org.brakewright.analysis.footwell.FootwellState.Which;
import org.brakewright.kernel.gap.ConvexBody;
import org.brakewright.kernel.gap.Gap;
import org.brakewright.kernel.gap.Point;
import org.brakewright.kernel.gap.SweptGap;
import org.brakewright.kernel.gap.Swing;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.jspecify.annotations.Nullable;

/** How near pedals come to what stands round them, over their whole travel. */
final class Sweeps {
    /** Room that a pedal is given, m; common practice, no source. */
    static final double ROOM = 10e-3;

    /** What lies further away is not told, m. */
    private static final double NEAR = 0.15;

    private static final double TOLERANCE = 1e-4;
    private static final double ROUNDING = 1e-6;
    private static final int CORNERS = 32;
    private static final int MOST_SHIFT = 60;
    private static final double MILLIMETRE = 1e-3;

    private final List<SweepState> states = new ArrayList<>();

    /** Nearest first. */
    List<SweepState> states() {
        states.sort(Comparator.comparingDouble(SweepState::gapM));
        return List.copyOf(states);
    }

    /** Something that stands still. */
    private record Still(String name, ConvexBody body) {}

    private final List<Still> around = new ArrayList<>();

    Sweeps(List<Obstacle> obstacles) {
        obstacles.forEach(obstacle -> around.add(new Still(obstacle.name(), body(obstacle))));
    }

    /** The panel that is pedalled against, its corners from the zero of the lines; a panel that is bent inward as its hull. */
    void panel(List<Place> corners, double thickness) {
        List<Point> points = corners.stream()
                .map(corner -> new Point(corner.x(), corner.y(), corner.z()))
                .toList();
        around.add(new Still("panel", new ConvexBody(points, thickness / 2)));
    }

    void add(Which which, PadSwing pedal) {
        for (Still still : around) {
            ConvexBody body = still.body();
            SweptGap swept = swept(pedal, body);
            Gap gap = swept.gap();
            if (gap.clearance() < NEAR) {
                Double shift = gap.clearance() < ROOM ? shift(pedal, body) : null;
                states.add(new SweepState(
                        which,
                        still.name(),
                        gap.clearance(),
                        pedal.travel(swept.angle()),
                        new Place(gap.first().x(), gap.first().y(), gap.first().z()),
                        shift));
            }
        }
    }

    private static SweptGap swept(PadSwing pedal, ConvexBody still) {
        double to = pedal.angle(pedal.pad().travel());
        SweptGap least = null;
        for (Swing swing : pedal.bodies()) {
            SweptGap each = SweptGap.of(swing, still, 0, to, TOLERANCE);
            if (least == null || each.gap().clearance() < least.gap().clearance()) {
                least = each;
            }
        }
        return requireNonNull(least);
    }

    /** The least whole number of millimetres to either side that makes room; looked for by sweeping again. */
    private static @Nullable Double shift(PadSwing pedal, ConvexBody still) {
        for (int by = 1; by <= MOST_SHIFT; by++) {
            for (int side : new int[] {1, -1}) {
                double shift = side * by * MILLIMETRE;
                if (swept(pedal.shifted(shift), still).gap().clearance() >= ROOM - ROUNDING) {
                    return shift;
                }
            }
        }
        return null;
    }

    /** A cylinder is taken as the prism of 32 sides round it, which is the safe side. */
    private static ConvexBody body(Obstacle obstacle) {
        Point from = point(obstacle.from());
        Point to = point(obstacle.to());
        return switch (obstacle.shape()) {
            case SPHERE -> new ConvexBody(List.of(from), obstacle.radius());
            case BOX -> new ConvexBody(box(from, to), 0);
            case CYLINDER -> new ConvexBody(prism(from, to, obstacle.radius() / Math.cos(Math.PI / CORNERS)), 0);
        };
    }

    private static List<Point> box(Point a, Point b) {
        List<Point> corners = new ArrayList<>();
        for (double x : new double[] {a.x(), b.x()}) {
            for (double y : new double[] {a.y(), b.y()}) {
                for (double z : new double[] {a.z(), b.z()}) {
                    corners.add(new Point(x, y, z));
                }
            }
        }
        return corners;
    }

    private static List<Point> prism(Point from, Point to, double radius) {
        Point along = to.minus(from);
        Point unlike = Math.abs(along.z()) < 0.9 * along.length() ? new Point(0, 0, 1) : new Point(1, 0, 0);
        Point first = along.cross(unlike);
        Point one = first.times(1 / first.length());
        Point second = along.cross(one);
        Point two = second.times(1 / second.length());
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < CORNERS; i++) {
            double angle = 2 * Math.PI * i / CORNERS;
            Point off = one.times(radius * Math.cos(angle)).plus(two.times(radius * Math.sin(angle)));
            corners.add(from.plus(off));
            corners.add(to.plus(off));
        }
        return corners;
    }

    private static Point point(Spot spot) {
        return new Point(spot.x(), spot.y(), spot.z());
    }
}
