package org.brakewright.drawing.page;

import java.util.List;
import org.brakewright.drawing.Bounds;

/**
 * The part of a drawing that one sheet shows.
 *
 * @param row from 1, from the top
 * @param column from 1, from the left
 * @param window in drawing coordinates
 * @param marks register marks in the overlaps with the neighbors
 */
public record Tile(int row, int column, Bounds window, List<RegisterMark> marks) {
    public Tile {
        marks = List.copyOf(marks);
    }

    /** Row and column, as R2C1. */
    public String name() {
        return name(row, column);
    }

    static String name(int row, int column) {
        return "R" + row + "C" + column;
    }
}
