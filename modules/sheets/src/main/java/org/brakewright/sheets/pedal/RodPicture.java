package org.brakewright.sheets.pedal;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.pedal.PushrodState;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Dimension;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Polyline;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Vertex;
import org.brakewright.model.resolved.ResolvedPushrod;
import org.brakewright.sheets.Measure;

/** A pushrod in its clevis from the side, the pin's centre in the origin and the piston on the right. */
final class RodPicture {
    private static final double PIN_SHARE = 0.5;
    private static final double BODY_SHARE = 0.9;
    private static final double NUT_SHARE = 0.85;
    private static final double BELOW = -12;
    private static final double STEP = -9;

    private RodPicture() {}

    static List<Shape> of(ResolvedPushrod rod, PushrodState state) {
        var shapes = new ArrayList<Shape>();
        double diameter = Measure.mm(rod.threadDiameter());
        double face = Measure.mm(rod.clevisLength());
        double end = Measure.mm(state.pinToEndM());
        double start = end - Measure.mm(state.cutM());
        clevis(face, diameter, shapes);
        shapes.add(rod(start, end, diameter));
        double threadEnd = start + Measure.mm(state.threadM());
        shapes.add(new Bounds(start, -0.42 * diameter, threadEnd, 0.42 * diameter).outline(Stroke.HIDDEN));
        shapes.add(new Bounds(face, -NUT_SHARE * diameter, face + Measure.mm(rod.jamNut()), NUT_SHARE * diameter)
                .outline(Stroke.OUTLINE));
        shapes.add(new Line(new Point(-diameter - 4, 0), new Point(end + 6, 0), Stroke.CENTRE));
        sizes(start, face, end, threadEnd, shapes);
        return shapes;
    }

    private static void clevis(double face, double diameter, List<Shape> shapes) {
        double half = BODY_SHARE * diameter;
        shapes.add(new Polyline(
                List.of(
                        Vertex.of(face, -half),
                        Vertex.of(face, half),
                        Vertex.turning(0, half, 180),
                        Vertex.of(0, -half)),
                true,
                Stroke.OUTLINE));
        shapes.add(new Circle(new Point(0, 0), PIN_SHARE * diameter, Stroke.OUTLINE));
    }

    /** A rod with a round end. */
    private static Polyline rod(double start, double end, double diameter) {
        double half = diameter / 2;
        return new Polyline(
                List.of(
                        Vertex.of(start, -half),
                        Vertex.turning(end - half, -half, 180),
                        Vertex.of(end - half, half),
                        Vertex.of(start, half)),
                true,
                Stroke.OUTLINE);
    }

    private static void sizes(double start, double face, double end, double threadEnd, List<Shape> shapes) {
        shapes.add(size(0, end, BELOW + 2 * STEP));
        shapes.add(size(start, end, BELOW + STEP));
        shapes.add(size(start, threadEnd, BELOW));
        shapes.add(size(start, face, -BELOW));
        shapes.add(size(0, face, -BELOW - STEP));
    }

    private static Dimension.Linear size(double from, double to, double offset) {
        return new Dimension.Linear(
                new Point(from, 0), new Point(to, 0), Dimension.Along.X, offset, Measure.fixed(to - from, 1));
    }
}
