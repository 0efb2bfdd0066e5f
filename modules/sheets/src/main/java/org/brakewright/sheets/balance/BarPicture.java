package org.brakewright.sheets.balance;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.analysis.balance.BarOutline;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Dimension;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.LineWidth;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;
import org.brakewright.model.resolved.ResolvedApply.Bar;
import org.brakewright.sheets.Measure;

/** A balance bar in one stance, seen from above with the nose of the car up and the front master on the right. */
final class BarPicture {
    private static final double PIN = 3;
    private static final double BEARING = 5;
    private static final double AXIS = 18;
    private static final double WORDS = 2.5;
    private static final double BELOW = 14;
    private static final double ASIDE = 10;

    private BarPicture() {}

    static List<Shape> of(String stance, Bar bar, BarOutline outline) {
        var shapes = new ArrayList<Shape>();
        limits(outline, shapes);
        Point bearing = at(outline.bearing());
        shapes.add(line(outline.bar(), Stroke.OUTLINE.with(LineWidth.WIDE)));
        shapes.add(new Circle(bearing, BEARING, Stroke.OUTLINE));
        rod("front", outline.front(), shapes);
        rod("rear", outline.rear(), shapes);
        sizes(bar, outline, shapes);
        Point middle = new Point(0, at(outline.bearing()).y());
        shapes.add(new Line(middle.plus(0, -BEARING - 3), middle.plus(0, BEARING + 3), Stroke.CENTRE));
        shapes.add(
                Text.of(new Point(0, -BELOW - 3 * ASIDE), WORDS + 0.5, stance).aligned(Align.CENTER));
        return shapes;
    }

    private static void limits(BarOutline outline, List<Shape> shapes) {
        shapes.add(line(outline.frontAheadMost(), Stroke.HIDDEN));
        shapes.add(line(outline.rearAheadMost(), Stroke.HIDDEN));
    }

    private static void rod(String name, BarOutline.Rod rod, List<Shape> shapes) {
        Point clevis = at(rod.clevis());
        Point socket = at(rod.socket());
        shapes.add(new Circle(clevis, PIN, Stroke.OUTLINE));
        shapes.add(new Line(clevis, socket, Stroke.OUTLINE));
        shapes.add(new Line(socket.plus(0, -AXIS), socket.plus(0, AXIS), Stroke.CENTRE));
        shapes.add(Text.of(socket.plus(0, AXIS + 2), WORDS, name).aligned(Align.CENTER));
    }

    private static void sizes(Bar bar, BarOutline outline, List<Shape> shapes) {
        Point front = at(outline.bar().front());
        Point rear = at(outline.bar().rear());
        Point bearing = at(outline.bearing());
        double low = -(BELOW + Math.max(0, Math.max(front.y(), rear.y())));
        shapes.add(size(rear, bearing, Dimension.Along.X, low, bar.clevisSpacing() / 2 + bar.offset()));
        shapes.add(size(bearing, front, Dimension.Along.X, low, bar.clevisSpacing() / 2 - bar.offset()));
        shapes.add(size(rear, front, Dimension.Along.X, low - ASIDE, bar.clevisSpacing()));
        Point clevis = at(outline.front().clevis());
        shapes.add(new Dimension.Linear(
                clevis,
                at(outline.front().socket()),
                Dimension.Along.BOTH,
                ASIDE,
                "rod " + Measure.metric(bar.stance().rodLength())));
        shapes.add(new Dimension.Linear(
                at(outline.rear().socket()),
                at(outline.front().socket()),
                Dimension.Along.X,
                AXIS + ASIDE,
                "masters " + Measure.metric(bar.stance().masterSpacing())));
    }

    private static Dimension.Linear size(Point from, Point to, Dimension.Along along, double offset, double metre) {
        return new Dimension.Linear(from, to, along, offset, Measure.metric(metre));
    }

    private static Line line(BarOutline.Line line, Stroke stroke) {
        return new Line(at(line.front()), at(line.rear()), stroke);
    }

    private static Point at(BarOutline.Spot spot) {
        return Measure.place(spot.acrossM(), spot.aheadM());
    }
}
