package org.brakewright.sheets.footwell;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.brakewright.analysis.footwell.FootwellState;
import org.brakewright.analysis.footwell.FootwellState.PadState;
import org.brakewright.analysis.footwell.FootwellState.SweepState;
import org.brakewright.analysis.footwell.FootwellState.Which;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Dimension;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.LineKind;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.model.resolved.ResolvedFootwell;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.sheets.Measure;

/** The pedals from one side at true scale, the zero of the lines in the origin. */
final class FootwellPicture {
    private static final double WORDS = 2.5;

    /** Half the thickness of a pad, m. */
    private static final double HALF_PAD = 3e-3;

    private static final double ROUND = 20;
    private static final double TICK = 50;
    private static final double DOT = 3;
    private static final int STATIONS = 24;
    private static final Stroke ROOM = Stroke.HIDDEN.with(LineKind.CONTINUOUS);

    private final View view;
    private final List<Shape> shapes = new ArrayList<>();

    private FootwellPicture(View view) {
        this.view = view;
    }

    static List<Shape> of(View view, ResolvedFootwell told, FootwellState state) {
        FootwellPicture picture = new FootwellPicture(view);
        state.pads().forEach(picture::pad);
        picture.padNames(state);
        if (view != View.SIDE) {
            picture.gaps(state);
        }
        Bounds room = picture.room(told);
        picture.around(told, state, room);
        picture.walls(told, room);
        picture.ticks(room);
        return picture.shapes;
    }

    /** Pads with what lies round them, and the walls. */
    private Bounds room(ResolvedFootwell told) {
        Bounds pads = Extent.of(shapes).grown(ROUND);
        double left =
                view == View.SIDE ? pads.minX() : -Measure.mm(told.leftWall().orElse(-pads.minX() / 1e3)) - TICK / 10;
        double right =
                view == View.SIDE ? pads.maxX() : -Measure.mm(told.rightWall().orElse(-pads.maxX() / 1e3)) + TICK / 10;
        return new Bounds(Math.min(left, pads.minX()), pads.minY(), Math.max(right, pads.maxX()), pads.maxY());
    }

    static String word(Which which) {
        return which.name().toLowerCase(Locale.ROOT);
    }

    private void pad(PadState pad) {
        plate(pad, pad.rest(), Stroke.OUTLINE);
        plate(pad, pad.end(), Stroke.HIDDEN);
        Place working = pad.working();
        if (working != null) {
            plate(pad, working, Stroke.HIDDEN);
        }
        Place pivot = new Place(pad.pivot().x(), pad.rest().y(), pad.pivot().z());
        shapes.add(new Line(view.at(pivot), view.at(pad.rest()), Stroke.DIMENSION));
        shapes.add(new Circle(view.at(pivot), DOT, Stroke.HOLE));
        shapes.add(Polyline.open(Stroke.CENTRE, way(pad)));
    }

    /** Beside the pads; from the left, where they hide each other, one above the other. */
    private void padNames(FootwellState state) {
        double up = view == View.PLAN ? 2 * WORDS : WORDS;
        for (PadState pad : state.pads()) {
            shapes.add(Text.of(view.at(pad.rest()).plus(DOT + 1, up), WORDS, word(pad.which())));
            up += view == View.SIDE ? 2 * WORDS : 0;
        }
    }

    /** The middle of the pad from rest to its end. */
    private Point[] way(PadState pad) {
        double radius = Math.hypot(
                pad.rest().x() - pad.pivot().x(), pad.rest().z() - pad.pivot().z());
        double from = Math.atan2(
                pad.rest().z() - pad.pivot().z(), pad.rest().x() - pad.pivot().x());
        double to = Math.atan2(
                pad.end().z() - pad.pivot().z(), pad.end().x() - pad.pivot().x());
        double turn = Math.IEEEremainder(to - from, 2 * Math.PI);
        Point[] points = new Point[STATIONS + 1];
        for (int i = 0; i <= STATIONS; i++) {
            double angle = from + turn * i / STATIONS;
            points[i] = view.at(new Place(
                    pad.pivot().x() + radius * Math.cos(angle),
                    pad.rest().y(),
                    pad.pivot().z() + radius * Math.sin(angle)));
        }
        return points;
    }

    /** What is seen of a plate square to its arm: the rectangle round its corners, turned in the view from the side. */
    private void plate(PadState pad, Place at, Stroke stroke) {
        double x = at.x() - pad.pivot().x();
        double z = at.z() - pad.pivot().z();
        double radius = Math.hypot(x, z);
        double half = pad.heightM() / 2 / radius;
        double thick = HALF_PAD / radius;
        Place[] corners = new Place[4];
        int[][] signs = {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}};
        for (int i = 0; i < corners.length; i++) {
            double along = signs[i][0] * half;
            double through = signs[i][1] * thick;
            corners[i] = new Place(at.x() + along * x + through * z, at.y(), at.z() + along * z - through * x);
        }
        if (view == View.SIDE) {
            shapes.add(Polyline.closed(
                    stroke, view.at(corners[0]), view.at(corners[1]), view.at(corners[2]), view.at(corners[3])));
        } else {
            double side = Measure.mm(pad.breadthM()) / 2;
            Bounds seen = Extent.of(List.of(Polyline.closed(
                    stroke, view.at(corners[0]), view.at(corners[1]), view.at(corners[2]), view.at(corners[3]))));
            shapes.add(new Bounds(seen.minX() - side, seen.minY(), seen.maxX() + side, seen.maxY()).outline(stroke));
        }
    }

    private void gaps(FootwellState state) {
        for (int i = 0; i + 1 < state.pads().size(); i++) {
            PadState left = state.pads().get(i);
            PadState right = state.pads().get(i + 1);
            Point from = view.at(edge(left, -1));
            Point to = view.at(edge(right, 1));
            shapes.add(new Dimension.Linear(from, to, Dimension.Along.X, Measure.mm(left.heightM()) / 2 + 12, ""));
        }
    }

    private static Place edge(PadState pad, int side) {
        return new Place(
                pad.rest().x(),
                pad.rest().y() + side * pad.breadthM() / 2,
                pad.rest().z());
    }

    /** What comes near, as far as it lies within the picture. */
    private void around(ResolvedFootwell told, FootwellState state, Bounds room) {
        Set<String> near = state.sweeps().stream().map(SweepState::obstacle).collect(Collectors.toSet());
        int named = 0;
        for (Obstacle obstacle : told.obstacles()) {
            Optional<Shape> seen =
                    near.contains(obstacle.name()) ? Envelope.of(view, obstacle, room) : Optional.empty();
            if (seen.isPresent()) {
                shapes.add(seen.get());
                shapes.add(name(obstacle, seen.get(), room, 2 * WORDS * named));
                named++;
            }
        }
    }

    private static Text name(Obstacle obstacle, Shape shape, Bounds room, double lower) {
        Bounds seen = Extent.of(List.of(shape));
        double x = Math.clamp(seen.minX() + 2, room.minX() + 2, room.maxX() - 25);
        double y = Math.clamp(seen.maxY() - WORDS - 2 - lower, room.minY() + 2, room.maxY() - 5);
        return Text.of(new Point(x, y), WORDS, obstacle.name());
    }

    private void walls(ResolvedFootwell told, Bounds room) {
        if (view == View.SIDE) {
            return;
        }
        told.leftWall().ifPresent(left -> wall(left, "left wall", room));
        told.rightWall().ifPresent(left -> wall(left, "right wall", room));
    }

    private void wall(double left, String name, Bounds room) {
        double x = -Measure.mm(left);
        shapes.add(new Line(new Point(x, room.minY()), new Point(x, room.maxY()), ROOM));
        shapes.add(Text.of(new Point(x + 1.5, room.minY() + 2), WORDS, name).turned(90));
    }

    /** Marks every 50 mm along two edges. */
    private void ticks(Bounds room) {
        for (double x = TICK * Math.ceil(room.minX() / TICK); x <= room.maxX(); x += TICK) {
            shapes.add(new Line(new Point(x, room.minY() - 3), new Point(x, room.minY()), Stroke.DIMENSION));
            double told = view == View.SIDE ? x : -x;
            shapes.add(Text.of(new Point(x + 0.5, room.minY() - 5.5), 2, Measure.fixed(told, 0)));
        }
        for (double y = TICK * Math.ceil(room.minY() / TICK); y <= room.maxY(); y += TICK) {
            shapes.add(new Line(new Point(room.minX() - 3, y), new Point(room.minX(), y), Stroke.DIMENSION));
            shapes.add(Text.of(new Point(room.minX() - 11, y - 1), 2, Measure.fixed(y, 0)));
        }
    }
}
