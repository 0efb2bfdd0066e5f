package org.brakewright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Tables as marks. */
final class TableMarks {
    private static final double TEXT_SHARE = 0.42;
    private static final double PADDING = 1.5;

    private TableMarks() {}

    static List<Mark> of(Table table) {
        var marks = new ArrayList<Mark>();
        double width = table.widths().stream().mapToDouble(Double::doubleValue).sum();
        double height = table.rowHeight() * table.rows().size();
        marks.add(Bounds.at(table.corner().plus(0, -height), width, height).outline(Stroke.TABLE));
        for (int row = 1; row < table.rows().size(); row++) {
            Point left = table.corner().plus(0, -row * table.rowHeight());
            Stroke stroke = row == 1 ? Stroke.TABLE.with(LineWidth.NARROW) : Stroke.TABLE;
            marks.add(new Line(left, left.plus(width, 0), stroke));
        }
        columns(table, height, marks);
        return marks;
    }

    private static void columns(Table table, double height, List<Mark> marks) {
        double x = 0;
        for (int column = 0; column < table.widths().size(); column++) {
            Point top = table.corner().plus(x, 0);
            if (column > 0) {
                marks.add(new Line(top, top.plus(0, -height), Stroke.TABLE));
            }
            words(table, column, top, marks);
            x += table.widths().get(column);
        }
    }

    private static void words(Table table, int column, Point top, List<Mark> marks) {
        double textHeight = TEXT_SHARE * table.rowHeight();
        double baseline = (table.rowHeight() + textHeight) / 2;
        double room = table.widths().get(column) - 2 * PADDING;
        for (int row = 0; row < table.rows().size(); row++) {
            String words = table.rows().get(row).get(column);
            if (!words.isBlank()) {
                Point anchor = top.plus(PADDING, -row * table.rowHeight() - baseline);
                marks.add(Text.of(anchor, textHeight, words).within(room));
            }
        }
    }
}
