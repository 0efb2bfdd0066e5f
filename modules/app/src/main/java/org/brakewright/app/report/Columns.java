package org.brakewright.app.report;

import java.util.List;
import org.brakewright.app.page.PageView;

/** A table in columns of spaces. */
final class Columns {
    private Columns() {}

    static String write(PageView.Table table) {
        int[] widths = new int[table.columns().size()];
        widen(widths, table.columns());
        table.rows().forEach(row -> widen(widths, row));
        StringBuilder text = new StringBuilder(table.caption()).append('\n');
        text.append(line(widths, table.columns()));
        table.rows().forEach(row -> text.append(line(widths, row)));
        return text.toString();
    }

    private static void widen(int[] widths, List<String> row) {
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], row.get(i).length());
        }
    }

    private static String line(int[] widths, List<String> row) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            text.append("  ")
                    .append(row.get(i))
                    .append(" ".repeat(widths[i] - row.get(i).length()));
        }
        return text.toString().stripTrailing() + "\n";
    }
}
