package org.brakewright.drawing.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.LineWidth;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;

/**
 * A bar of known length, to be measured on paper from one end of the ink to the other.
 *
 * @param step from one tick to the next, mm
 */
public record CheckBar(Point from, boolean upright, double length, double step, String label) {
    /** Length of the metric bars, mm. */
    public static final double METRIC = 100;

    /** Length of the bars in inches, mm. */
    public static final double INCHES = 4 * 25.4;

    private static final double TICK = 2;
    private static final double LABEL_HEIGHT = 2.5;
    private static final Stroke BAR = Stroke.CHECK.with(LineWidth.WIDE);

    /** The four bars beside and below a window. */
    static List<CheckBar> around(Bounds window) {
        Bounds strip = Furniture.checkStrip(window);
        Point low = strip.corner().plus(5, 4);
        Point left = window.corner().plus(-9, 4);
        return List.of(
                metric(low.plus(0, 6), false), inches(low, false), metric(left, true), inches(left.plus(6, 0), true));
    }

    private static CheckBar metric(Point from, boolean upright) {
        return new CheckBar(from, upright, METRIC, 10, "100 mm");
    }

    private static CheckBar inches(Point from, boolean upright) {
        return new CheckBar(from, upright, INCHES, 25.4, "4 in");
    }

    /** The bar alone. */
    public Line bar() {
        return new Line(from, from.polar(length, along()), BAR);
    }

    /** Bar, ticks between its ends, label behind its end. */
    List<Mark> marks() {
        var ticks = new ArrayList<Mark>();
        for (int i = 1; i * step < length - step / 2; i++) {
            Point at = from.polar(i * step, along());
            ticks.add(new Line(at, at.polar(TICK, along() + 90), Stroke.CHECK));
        }
        Point words = from.polar(length + 2, along()).polar(-LABEL_HEIGHT / 2, along() + 90);
        Text text = new Text(words, LABEL_HEIGHT, label, Align.LEFT, along(), Layer.CHECK);
        return Stream.concat(Stream.of(bar(), text), ticks.stream()).toList();
    }

    private double along() {
        return upright ? 90 : 0;
    }
}
