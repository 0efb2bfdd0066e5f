package org.brakewright.drawing.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Point;

/**
 * How a drawing is cut into tiles of the same size that overlap their neighbors by {@link #OVERLAP}. Each seam has two
 * register marks, in the middle of the overlap, a quarter of the way from the ends.
 */
public record Tiling(Sheet sheet, int rows, int columns, List<Tile> tiles) {
    /** Width of the strip that two neighbors share, mm. */
    public static final double OVERLAP = 10;

    /** More sheets than anybody tapes together. */
    private static final int MOST_TILES = 400;

    private static final double ROUNDING = 1e-9;

    public Tiling {
        tiles = List.copyOf(tiles);
    }

    /**
     * Tiles that cover {@code content}, on as few sheets as will do, upright where that makes no difference;
     * IllegalArgumentException for a content that takes more than 400 sheets.
     */
    public static Tiling of(Bounds content, Paper paper) {
        Sheet upright = new Sheet(paper, false);
        Sheet landscape = new Sheet(paper, true);
        Sheet sheet = count(content, landscape) < count(content, upright) ? landscape : upright;
        if (count(content, sheet) > MOST_TILES) {
            throw new IllegalArgumentException("content must fit on " + MOST_TILES + " sheets of " + paper);
        }
        Bounds window = sheet.window();
        return of(content, sheet, tiles(content.height(), window.height()), tiles(content.width(), window.width()));
    }

    private static Tiling of(Bounds content, Sheet sheet, long rows, long columns) {
        Bounds window = sheet.window();
        double width = columns * (window.width() - OVERLAP) + OVERLAP;
        double height = rows * (window.height() - OVERLAP) + OVERLAP;
        Grid grid = new Grid(Bounds.around(content.middle(), width, height), window, (int) rows, (int) columns);
        return new Tiling(sheet, grid.rows, grid.columns, grid.tiles());
    }

    private static double count(Bounds content, Sheet sheet) {
        Bounds window = sheet.window();
        return (double) tiles(content.height(), window.height()) * tiles(content.width(), window.width());
    }

    private static long tiles(double size, double window) {
        return Math.max(1, (long) Math.ceil((size - OVERLAP) / (window - OVERLAP) - ROUNDING));
    }

    /** Rows and columns of windows over all that they cover. */
    private record Grid(Bounds all, Bounds window, int rows, int columns) {
        List<Tile> tiles() {
            List<RegisterMark> marks = marks();
            return cells(rows, columns)
                    .map(cell -> tile(cell[0], cell[1], marks))
                    .toList();
        }

        private Tile tile(int row, int column, List<RegisterMark> marks) {
            Bounds place = place(row, column);
            List<RegisterMark> own =
                    marks.stream().filter(mark -> place.contains(mark.at())).toList();
            return new Tile(row, column, place, own);
        }

        private Bounds place(int row, int column) {
            double x = all.minX() + (column - 1) * (window.width() - OVERLAP);
            double top = all.maxY() - (row - 1) * (window.height() - OVERLAP);
            return Bounds.at(new Point(x, top - window.height()), window.width(), window.height());
        }

        private List<RegisterMark> marks() {
            var marks = new ArrayList<RegisterMark>();
            cells(rows, columns - 1).forEach(cell -> marks.addAll(beside(cell[0], cell[1])));
            cells(rows - 1, columns).forEach(cell -> marks.addAll(below(cell[0], cell[1])));
            return marks;
        }

        private List<RegisterMark> beside(int row, int column) {
            Bounds place = place(row, column);
            Point seam = new Point(place.maxX() - OVERLAP / 2, place.minY());
            String label = Tile.name(row, column) + "/" + Tile.name(row, column + 1);
            return List.of(
                    new RegisterMark(seam.plus(0, place.height() / 4), true, label + " a"),
                    new RegisterMark(seam.plus(0, place.height() * 3 / 4), true, label + " b"));
        }

        private List<RegisterMark> below(int row, int column) {
            Bounds place = place(row, column);
            Point seam = new Point(place.minX(), place.minY() + OVERLAP / 2);
            String label = Tile.name(row, column) + "/" + Tile.name(row + 1, column);
            return List.of(
                    new RegisterMark(seam.plus(place.width() / 4, 0), false, label + " a"),
                    new RegisterMark(seam.plus(place.width() * 3 / 4, 0), false, label + " b"));
        }

        private static Stream<int[]> cells(int rows, int columns) {
            return IntStream.rangeClosed(1, rows)
                    .boxed()
                    .flatMap(row -> IntStream.rangeClosed(1, columns).mapToObj(column -> new int[] {row, column}));
        }
    }
}
