package org.brakewright.sheets.footwell;

import java.util.Optional;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.LineKind;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.model.resolved.ResolvedLines.Obstacle;
import org.brakewright.model.resolved.ResolvedLines.Spot;
import org.brakewright.model.resolved.ResolvedMount.Place;
import org.brakewright.sheets.Measure;

/** What is seen of an obstacle from a side, cut off where the picture ends. */
final class Envelope {
    private static final Stroke EDGE = Stroke.HIDDEN.with(LineKind.CONTINUOUS);

    private Envelope() {}

    /** Empty when it lies outside the picture. */
    static Optional<Shape> of(View view, Obstacle obstacle, Bounds room) {
        Point from = view.at(place(obstacle.from()));
        Point to = view.at(place(obstacle.to()));
        double radius = Measure.mm(obstacle.radius());
        return switch (obstacle.shape()) {
            case BOX -> box(from, to, room);
            case SPHERE -> ball(from, radius, room);
            case CYLINDER -> from.distance(to) < 1e-6 ? ball(from, radius, room) : bar(from, to, radius, room);
        };
    }

    private static Place place(Spot spot) {
        return new Place(spot.x(), spot.y(), spot.z());
    }

    private static Optional<Shape> box(Point a, Point b, Bounds room) {
        double minX = Math.max(room.minX(), Math.min(a.x(), b.x()));
        double maxX = Math.min(room.maxX(), Math.max(a.x(), b.x()));
        double minY = Math.max(room.minY(), Math.min(a.y(), b.y()));
        double maxY = Math.min(room.maxY(), Math.max(a.y(), b.y()));
        return minX < maxX && minY < maxY
                ? Optional.of(new Bounds(minX, minY, maxX, maxY).outline(EDGE))
                : Optional.empty();
    }

    private static Optional<Shape> ball(Point middle, double radius, Bounds room) {
        return room.contains(middle) ? Optional.of(new Circle(middle, radius, EDGE)) : Optional.empty();
    }

    /** The stretch of the axis within the picture, as broad as the bar (Liang and Barsky's clipping). */
    private static Optional<Shape> bar(Point from, Point to, double radius, Bounds room) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double[] ways = {-dx, dx, -dy, dy};
        double[] rooms = {from.x() - room.minX(), room.maxX() - from.x(), from.y() - room.minY(), room.maxY() - from.y()
        };
        double start = 0;
        double end = 1;
        for (int i = 0; i < ways.length; i++) {
            if (ways[i] < 0) {
                start = Math.max(start, rooms[i] / ways[i]);
            } else if (ways[i] > 0) {
                end = Math.min(end, rooms[i] / ways[i]);
            } else if (rooms[i] < 0) {
                return Optional.empty();
            }
        }
        if (start >= end) {
            return Optional.empty();
        }
        double length = Math.hypot(dx, dy);
        double offX = -dy / length * radius;
        double offY = dx / length * radius;
        Point a = from.plus(start * dx, start * dy);
        Point b = from.plus(end * dx, end * dy);
        return Optional.of(Polyline.closed(
                EDGE, a.plus(offX, offY), b.plus(offX, offY), b.plus(-offX, -offY), a.plus(-offX, -offY)));
    }
}
