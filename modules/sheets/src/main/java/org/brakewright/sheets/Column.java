package org.brakewright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.brakewright.drawing.Bounds;
import org.brakewright.drawing.Extent;
import org.brakewright.drawing.Figure;
import org.brakewright.drawing.Placement;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Shape;
import org.brakewright.drawing.Table;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.lettering.Wrap;

/**
 * Blocks one below the other, their left edges in line, on as many pages as they take. A picture larger than a page
 * stands alone and is tiled; words and tables are broken instead.
 */
public final class Column {
    /** Words and tables are this wide, mm: what an upright page of A4 or letter shows between its strips. */
    public static final double WIDTH = 172;

    private static final double HEIGHT = 212;
    /** Of widths that add up to a page, mm. */
    private static final double ROUNDING = 1e-6;

    private static final double GAP = 8;
    private static final double HEADING = 3.5;
    private static final double WORDS = 2.5;
    private static final double ROW = 6;
    private static final int LEAST_ROWS = 3;

    private final List<List<Shape>> pages = new ArrayList<>();
    private final List<Shape> page = new ArrayList<>();
    private double bottom;

    /** Adds shapes as they are, moved. */
    public Column add(List<? extends Shape> block) {
        Bounds room = Extent.of(block);
        if (room.width() > WIDTH + ROUNDING || room.height() > HEIGHT + ROUNDING) {
            turn();
            pages.add(List.copyOf(block));
        } else {
            place(block, room, GAP);
        }
        return this;
    }

    /** Adds a line of larger words that stays with what follows. */
    public Column heading(String words) {
        keep(GAP + Wrap.LINE_FEED * HEADING + GAP + (1 + LEAST_ROWS) * ROW);
        return add(List.of(Text.of(new Point(0, 0), HEADING, words)));
    }

    /** Adds words that are wrapped; each starts a line of its own. */
    public Column words(List<String> paragraphs) {
        double gap = GAP;
        for (String paragraph : paragraphs) {
            List<Shape> lines = lines(paragraph);
            place(lines, Extent.of(lines), gap);
            gap = WORDS;
        }
        return this;
    }

    /** Adds a table whose columns share the width as told; the first row is its heading, on every page. */
    public Column table(List<Double> shares, List<List<String>> rows) {
        double whole = shares.stream().mapToDouble(Double::doubleValue).sum();
        List<Double> widths =
                shares.stream().map(share -> share / whole * WIDTH).toList();
        List<List<String>> left = rows.subList(1, rows.size());
        do {
            keep(GAP + (1 + Math.min(LEAST_ROWS, left.size())) * ROW);
            int fit = Math.min(left.size(), (int) ((HEIGHT + bottom - GAP) / ROW) - 1);
            List<List<String>> shown = Stream.concat(Stream.of(rows.getFirst()), left.subList(0, fit).stream())
                    .toList();
            add(List.of(new Table(new Point(0, 0), widths, ROW, shown)));
            left = left.subList(fit, left.size());
        } while (!left.isEmpty());
        return this;
    }

    /** Everything that was added, page by page. */
    public List<List<Shape>> pages() {
        turn();
        return List.copyOf(pages);
    }

    private static List<Shape> lines(String paragraph) {
        var lines = new ArrayList<Shape>();
        for (String line : Wrap.lines(paragraph, WORDS, WIDTH)) {
            lines.add(Text.of(new Point(0, -Wrap.LINE_FEED * WORDS * lines.size()), WORDS, line));
        }
        return lines;
    }

    private void place(List<? extends Shape> block, Bounds room, double gap) {
        keep(gap + room.height());
        double top = page.isEmpty() ? 0 : bottom - gap;
        page.add(new Figure(List.copyOf(block), Placement.at(-room.minX(), top - room.maxY())));
        bottom = top - room.height();
    }

    /** Begins a new page when less than {@code height} is left on this one. */
    private void keep(double height) {
        if (bottom - height < -HEIGHT - ROUNDING) {
            turn();
        }
    }

    private void turn() {
        if (!page.isEmpty()) {
            pages.add(List.copyOf(page));
            page.clear();
            bottom = 0;
        }
    }
}
