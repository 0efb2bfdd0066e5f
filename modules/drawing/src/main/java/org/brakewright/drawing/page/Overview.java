package org.brakewright.drawing.page;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.drawing.Align;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Figure;
import org.brakewright.drawing.Layer;
import org.brakewright.drawing.LineKind;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Marks;
import org.brakewright.drawing.Placement;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Stroke;
import org.brakewright.drawing.Text;

/** The map of the tiles: the whole drawing, small, under their windows and names. */
final class Overview {
    private static final String WARNING = "Map of the tiles, not to scale: do not cut from this page";
    private static final double WARNING_HEIGHT = 3.5;
    private static final double ABOVE = 12;
    private static final double NAME_SHARE = 0.12;

    private Overview() {}

    static Page page(Drawing drawing, Tiling tiling, Legend legend) {
        Bounds window = tiling.sheet().window();
        Bounds room = new Bounds(window.minX() + 6, window.minY() + 6, window.maxX() - 6, window.maxY() - ABOVE);
        var artwork = new ArrayList<Mark>();
        artwork.addAll(map(drawing, tiling, room));
        Point head = new Point(window.middle().x(), window.maxY() - ABOVE / 2 - WARNING_HEIGHT / 2);
        artwork.add(Text.of(head, WARNING_HEIGHT, WARNING)
                .aligned(Align.CENTER)
                .on(Layer.CHECK)
                .within(room.width()));
        artwork.addAll(Stamp.across(window, drawing.stamp()));
        return new Page("overview", tiling.sheet().media(), window, artwork, Furniture.around(window, legend));
    }

    private static List<Mark> map(Drawing drawing, Tiling tiling, Bounds room) {
        Bounds all =
                tiling.tiles().stream().map(Tile::window).reduce(Bounds::union).orElseThrow();
        double scale = Math.min(room.width() / all.width(), room.height() / all.height());
        Point to = room.middle()
                .plus(-scale * all.middle().x(), -scale * all.middle().y());
        var shapes = new ArrayList<Shape>(drawing.shapes());
        tiling.tiles().forEach(tile -> shapes.addAll(tile(tile)));
        return Marks.of(List.of(new Figure(shapes, new Placement(to, 0, scale, false))));
    }

    private static List<Shape> tile(Tile tile) {
        Bounds window = tile.window();
        double height = NAME_SHARE * window.height();
        Text name = Text.of(window.middle().plus(0, -height / 2), height, tile.name());
        return List.of(
                window.outline(Stroke.CHECK.with(LineKind.DASHED)),
                name.aligned(Align.CENTER).on(Layer.CHECK));
    }
}
