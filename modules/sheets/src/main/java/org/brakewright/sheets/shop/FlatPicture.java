package org.brakewright.sheets.shop;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.shop.ShopState.BendLine;
import org.brakewright.analysis.shop.ShopState.FlatHole;
import org.brakewright.analysis.shop.ShopState.FlatPart;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Dimension;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.LineKind;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.sheets.Measure;

/** A flat strip with its bend lines and holes, its lower left corner in the origin. */
final class FlatPicture {
    private static final double WORDS = 2.5;
    private static final double STEP = 9;
    private static final double CROSS = 3;

    private FlatPicture() {}

    static List<Shape> of(FlatPart part) {
        var shapes = new ArrayList<Shape>();
        double length = Measure.mm(part.lengthM());
        double width = Measure.mm(part.widthM());
        shapes.add(new Bounds(0, 0, length, width).outline(Stroke.OUTLINE));
        part.bends().forEach(bend -> bend(bend, width, shapes));
        part.holes().forEach(hole -> hole(hole, shapes));
        shapes.add(size(0, length, -2 * STEP));
        double from = 0;
        for (BendLine bend : part.bends()) {
            shapes.add(size(from, Measure.mm(bend.middleM()), -STEP));
            from = Measure.mm(bend.middleM());
        }
        shapes.add(size(from, length, -STEP));
        shapes.add(new Dimension.Linear(new Point(0, 0), new Point(0, width), Dimension.Along.Y, STEP, ""));
        return shapes;
    }

    /** "up 90.0°". */
    static String way(BendLine bend) {
        return (bend.angleRad() > 0 ? "up " : "down ") + Measure.degrees(Math.abs(bend.angleRad()));
    }

    private static void bend(BendLine bend, double width, List<Shape> shapes) {
        double middle = Measure.mm(bend.middleM());
        shapes.add(across(middle, width, Stroke.BEND));
        Stroke ends = Stroke.BEND.with(LineKind.DASHED);
        shapes.add(across(Measure.mm(bend.startM()), width, ends));
        shapes.add(across(Measure.mm(bend.endM()), width, ends));
        shapes.add(new Text(new Point(middle - 1, width + 3), WORDS, way(bend), Align.LEFT, 60, Layer.BEND));
    }

    private static Line across(double x, double width, Stroke stroke) {
        return new Line(new Point(x, 0), new Point(x, width), stroke);
    }

    private static void hole(FlatHole hole, List<Shape> shapes) {
        Point middle = Measure.place(hole.alongM(), hole.acrossM());
        double radius = Measure.mm(hole.diameterM()) / 2;
        shapes.add(new Circle(middle, radius, Stroke.HOLE));
        double arm = radius + CROSS;
        shapes.add(new Line(middle.plus(-arm, 0), middle.plus(arm, 0), Stroke.CENTRE));
        shapes.add(new Line(middle.plus(0, -arm), middle.plus(0, arm), Stroke.CENTRE));
        shapes.add(new Dimension.Diameter(middle, radius, 45, ""));
    }

    private static Dimension.Linear size(double from, double to, double offset) {
        return new Dimension.Linear(new Point(from, 0), new Point(to, 0), Dimension.Along.X, offset, "");
    }
}
