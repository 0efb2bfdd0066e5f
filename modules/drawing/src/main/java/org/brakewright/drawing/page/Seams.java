package org.brakewright.drawing.page;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Line;
import org.brakewright.drawing.LineKind;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Stroke;

/** Where tiles are joined: a dashed line in the middle of each overlap, to trim one of the two sheets at, and the register marks. */
final class Seams {
    private static final Stroke TRIM = Stroke.CHECK.with(LineKind.DASHED);

    private Seams() {}

    /** In drawing coordinates. */
    static List<Mark> marks(Tiling tiling, Tile tile) {
        var marks = new ArrayList<Mark>();
        Bounds window = tile.window();
        double half = Tiling.OVERLAP / 2;
        if (tile.column() > 1) {
            marks.add(upright(window, window.minX() + half));
        }
        if (tile.column() < tiling.columns()) {
            marks.add(upright(window, window.maxX() - half));
        }
        if (tile.row() > 1) {
            marks.add(level(window, window.maxY() - half));
        }
        if (tile.row() < tiling.rows()) {
            marks.add(level(window, window.minY() + half));
        }
        tile.marks().forEach(mark -> marks.addAll(mark.marks()));
        return marks;
    }

    private static Mark upright(Bounds window, double x) {
        return new Line(new Point(x, window.minY()), new Point(x, window.maxY()), TRIM);
    }

    private static Mark level(Bounds window, double y) {
        return new Line(new Point(window.minX(), y), new Point(window.maxX(), y), TRIM);
    }
}
