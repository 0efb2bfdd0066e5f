package org.brakewright.sheets.lines;

import java.util.List;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Vertex;
import org.brakewright.model.lines.PartKind;

/**
 * Symbols of a hydraulic diagram, mm, the line coming in at the origin from the left; that of a master begins at the origin
 * to the right. After ISO 1219-1, from memory; bracket, bleeder and balance bar are our own and stand in the legend.
 */
final class Symbols {
    private static final Stroke LINE = Stroke.OUTLINE;
    private static final double HALF = 3.5;

    private Symbols() {}

    /** The symbol of a part. */
    static List<Shape> of(PartKind kind) {
        return switch (kind) {
            case MASTER -> master();
            case TEE, BLOCK -> List.of(new Circle(new Point(0, 0), 0.9, LINE), new Circle(new Point(0, 0), 0.4, LINE));
            case HOSE_BRACKET, BULKHEAD -> List.of(line(0, -2.5, 0, 2.5), line(0.8, -2.5, 0.8, 2.5));
            case PROPORTIONING_VALVE -> reducing();
            case METERING_VALVE -> valve();
            case RESIDUAL_VALVE -> check();
            case SWITCH -> List.of(box(0, 7), line(1, -2, 6, 2), line(1, -2, 2.5, -2));
            case GAUGE -> List.of(new Circle(new Point(HALF, 0), HALF, LINE), line(1.5, -2, 5.5, 2));
            case CALIPER, WHEEL_CYLINDER -> List.of(box(0, 10), line(5, -HALF, 5, HALF), line(5, 0, 14, 0));
            case CLUTCH_SLAVE -> List.of(box(0, 10), line(5, -HALF, 5, HALF), line(5, 0, 14, 0), spring(5, 10));
        };
    }

    /** How far a symbol reaches to the right, mm: where the next line begins. */
    static double reach(PartKind kind) {
        return switch (kind) {
            case PROPORTIONING_VALVE, METERING_VALVE, RESIDUAL_VALVE, SWITCH, GAUGE -> 7;
            case HOSE_BRACKET, BULKHEAD -> 0.8;
            case MASTER, TEE, BLOCK, CALIPER, WHEEL_CYLINDER, CLUTCH_SLAVE -> 0;
        };
    }

    /** A bleeder above the origin: a plugged port. */
    static List<Shape> bleeder() {
        return List.of(line(0, 0, 0, 4), line(-1, 5, 1, 3), line(-1, 3, 1, 5));
    }

    /** A line that can be bent, between two places. */
    static Polyline flexible(Point from, Point to) {
        return new Polyline(List.of(Vertex.turning(from.x(), from.y(), -60), Vertex.of(to.x(), to.y())), false, LINE);
    }

    /** A single-acting cylinder with its spring and, above it, a tank open to the air; the rod comes from the left. */
    private static List<Shape> master() {
        return List.of(
                box(-14, 14),
                line(-9, -HALF, -9, HALF),
                line(-9, 0, -20, 0),
                spring(-9, 0),
                line(-4, HALF, -4, HALF + 3),
                Polyline.open(
                        LINE,
                        new Point(-8, HALF + 7),
                        new Point(-8, HALF + 3),
                        new Point(0, HALF + 3),
                        new Point(0, HALF + 7)));
    }

    /** A pressure reducing valve: way through, spring above, piloted from its outlet. */
    private static List<Shape> reducing() {
        return List.of(
                box(0, 7),
                line(0, 0, 7, 0),
                line(5.4, 0.9, 7, 0),
                line(5.4, -0.9, 7, 0),
                Polyline.open(
                        Stroke.HIDDEN,
                        new Point(7, 0),
                        new Point(8.5, 0),
                        new Point(8.5, -5),
                        new Point(3.5, -5),
                        new Point(3.5, -HALF)),
                Polyline.open(
                        LINE,
                        new Point(3.5, HALF),
                        new Point(2.3, HALF + 0.8),
                        new Point(4.7, HALF + 1.6),
                        new Point(2.3, HALF + 2.4),
                        new Point(4.7, HALF + 3.2)));
    }

    /** Opened by its own inlet. */
    private static List<Shape> valve() {
        return List.of(
                box(0, 7),
                line(0, 1.5, 7, 1.5),
                Polyline.open(
                        Stroke.HIDDEN,
                        new Point(-1.5, 0),
                        new Point(-1.5, -5),
                        new Point(3.5, -5),
                        new Point(3.5, -HALF)));
    }

    /** Ball, seat and spring: opens toward the brakes. */
    private static List<Shape> check() {
        return List.of(new Circle(new Point(2.5, 0), 1.5, LINE), line(1, 2.2, 1, -2.2), spring(4, 7));
    }

    private static Polyline spring(double from, double to) {
        double step = (to - from) / 4;
        return Polyline.open(
                LINE,
                new Point(from, -2),
                new Point(from + step, 2),
                new Point(from + 2 * step, -2),
                new Point(from + 3 * step, 2),
                new Point(to, -2));
    }

    private static Polyline box(double left, double width) {
        return Polyline.closed(
                LINE,
                new Point(left, -HALF),
                new Point(left + width, -HALF),
                new Point(left + width, HALF),
                new Point(left, HALF));
    }

    private static Line line(double fromX, double fromY, double toX, double toY) {
        return new Line(new Point(fromX, fromY), new Point(toX, toY), LINE);
    }
}
