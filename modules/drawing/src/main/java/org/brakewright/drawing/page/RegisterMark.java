package org.brakewright.drawing.page;

import java.util.List;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Circle;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;

/**
 * A cross in the overlap of two tiles, printed on both.
 *
 * @param at in drawing coordinates
 * @param upright whether the tiles stand side by side, so that their seam runs up
 * @param label names both tiles and counts the marks of their seam
 */
public record RegisterMark(Point at, boolean upright, String label) {
    private static final double ARM = 4;
    private static final double RADIUS = 2;
    private static final double LABEL_HEIGHT = 1.8;

    /** Cross, circle and label; all of it fits into the overlap. */
    List<Mark> marks() {
        double along = upright ? 90 : 0;
        Point label = at.polar(ARM + 1, along).polar(0.8, along + 90);
        return List.of(
                new Line(at.plus(-ARM, 0), at.plus(ARM, 0), Stroke.CHECK),
                new Line(at.plus(0, -ARM), at.plus(0, ARM), Stroke.CHECK),
                new Circle(at, RADIUS, Stroke.CHECK),
                new Text(label, LABEL_HEIGHT, label(), Align.LEFT, along, Layer.CHECK));
    }
}
