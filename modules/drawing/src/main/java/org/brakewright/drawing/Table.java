package org.brakewright.drawing;

import java.util.List;

/**
 * A table; its first row is the heading.
 *
 * @param corner upper left
 * @param widths of the columns, mm
 * @param rowHeight mm
 * @param rows words of each cell, as many a row as there are columns; words too long are written smaller
 */
public record Table(Point corner, List<Double> widths, double rowHeight, List<List<String>> rows) implements Shape {
    public Table {
        widths = List.copyOf(widths);
        rows = rows.stream().map(List::copyOf).toList();
        widths.forEach(width -> Demand.positive("widths", width));
        Demand.positive("rowHeight", rowHeight);
        if (widths.isEmpty() || rows.isEmpty()) {
            throw new IllegalArgumentException("widths and rows must not be empty");
        }
        for (List<String> row : rows) {
            if (row.size() != widths.size()) {
                throw new IllegalArgumentException(
                        "rows must have " + widths.size() + " cells each, one has " + row.size());
            }
        }
    }
}
