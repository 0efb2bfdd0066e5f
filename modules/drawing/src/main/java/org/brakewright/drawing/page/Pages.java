package org.brakewright.drawing.page;

import java.util.ArrayList;
import java.util.List;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Figure;
import org.brakewright.drawing.LineWidth;
import org.brakewright.drawing.Mark;
import org.brakewright.drawing.Marks;
import org.brakewright.drawing.Placement;
import org.brakewright.drawing.Shape;

/** Lays a drawing out on pages. */
public final class Pages {
    /** White kept around the drawing, so that a line on its edge is not cut in half, mm. */
    private static final double CLEARANCE = 2 * LineWidth.WIDE.mm();

    private static final double WHOLE_CLEARANCE = 5;

    private Pages() {}

    /**
     * The drawing at true scale on paper: one page, or an overview and a page for each tile; IllegalArgumentException for
     * a drawing of more than 400 tiles.
     */
    public static List<Page> of(Drawing drawing, Paper paper) {
        return of(List.of(drawing), paper);
    }

    /** Drawings that belong together, one after the other, their pages counted through; refuses as for one. */
    public static List<Page> of(List<Drawing> drawings, Paper paper) {
        List<Tiling> tilings =
                drawings.stream().map(drawing -> tiling(drawing, paper)).toList();
        int count = tilings.stream().mapToInt(Pages::count).sum();
        var pages = new ArrayList<Page>();
        for (int i = 0; i < tilings.size(); i++) {
            lay(drawings.get(i), tilings.get(i), count, pages);
        }
        return List.copyOf(pages);
    }

    private static void lay(Drawing drawing, Tiling tiling, int count, List<Page> pages) {
        boolean tiled = count(tiling) > 1;
        if (tiled) {
            pages.add(Overview.page(
                    drawing,
                    tiling,
                    new Legend(drawing.title(), Legend.NOT_TO_SCALE, page(pages.size() + 1, count, "overview"))));
        }
        for (Tile tile : tiling.tiles()) {
            String shows = tiled ? "tile " + tile.name() : "whole drawing";
            Legend legend = new Legend(drawing.title(), Legend.TRUE_SCALE, page(pages.size() + 1, count, shows));
            pages.add(page(drawing, tiling, tile, legend));
        }
    }

    private static int count(Tiling tiling) {
        int tiles = tiling.tiles().size();
        return tiles > 1 ? tiles + 1 : tiles;
    }

    /** The tiles that {@link #of} puts on paper. */
    public static Tiling tiling(Drawing drawing, Paper paper) {
        return Tiling.of(Extent.of(drawing.shapes()).grown(CLEARANCE), paper);
    }

    /** The whole drawing, in its own coordinates, on one page as large as it needs. */
    public static Page whole(Drawing drawing) {
        Bounds content = Extent.of(drawing.shapes()).grown(WHOLE_CLEARANCE);
        double width = Math.max(content.width(), Furniture.LEAST_WIDTH);
        double height = Math.max(content.height(), Furniture.LEAST_HEIGHT);
        Bounds window = Bounds.around(content.middle(), width, height);
        var artwork = new ArrayList<>(Marks.of(drawing.shapes()));
        artwork.addAll(Stamp.across(window, drawing.stamp()));
        Legend legend = new Legend(drawing.title(), Legend.TRUE_SCALE, page(1, 1, "whole drawing"));
        Bounds media = Furniture.frame(window).grown(Paper.MARGIN);
        return new Page("whole", media, window, artwork, Furniture.around(window, legend));
    }

    private static Page page(Drawing drawing, Tiling tiling, Tile tile, Legend legend) {
        Bounds window = tiling.sheet().window();
        double dx = window.minX() - tile.window().minX();
        double dy = window.minY() - tile.window().minY();
        var shapes = new ArrayList<Shape>(drawing.shapes());
        shapes.addAll(Seams.marks(tiling, tile));
        var artwork = new ArrayList<Mark>(Marks.of(List.of(new Figure(shapes, Placement.at(dx, dy)))));
        artwork.addAll(Stamp.across(window, drawing.stamp()));
        return new Page(tile.name(), tiling.sheet().media(), window, artwork, Furniture.around(window, legend));
    }

    private static String page(int number, int count, String shows) {
        return number + " of " + count + ": " + shows;
    }
}
