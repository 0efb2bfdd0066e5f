package org.brakewright.buildfile;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakewright.quantity.Dimension;
import org.brakewright.quantity.QuantityReader;
import org.brakewright.quantity.Reading;
import org.brakewright.quantity.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Where time and speed stand in a log file.
 *
 * @param line of the headings
 * @param time column of the time
 * @param speed column of the speed
 */
record LogColumns(long line, Column time, Column speed) {
    private static final Pattern HEADING = Pattern.compile("(.*?)\\s*(?:\\[([^]]*)]|\\(([^)]*)\\))?");

    /**
     * One column.
     *
     * @param index the first is 0
     * @param unit as the heading says; null when it names none that measures this
     * @param heading as written
     */
    record Column(int index, @Nullable Unit unit, String heading) {}

    /** The columns by the headings of a line; empty when one of them is not there. */
    static Optional<LogColumns> in(CsvRecord line, String time, String speed) {
        Optional<Column> first = column(line.getFields(), time, Dimension.TIME);
        Optional<Column> second = column(line.getFields(), speed, Dimension.SPEED);
        return first.isPresent() && second.isPresent()
                ? Optional.of(new LogColumns(line.getStartingLineNumber(), first.get(), second.get()))
                : Optional.empty();
    }

    private static Optional<Column> column(List<String> headings, String name, Dimension dimension) {
        String wanted = name.strip().toLowerCase(Locale.ROOT);
        for (int i = 0; i < headings.size(); i++) {
            Matcher heading = HEADING.matcher(headings.get(i).strip());
            if (heading.matches() && heading.group(1).toLowerCase(Locale.ROOT).equals(wanted)) {
                String unit = heading.group(2) == null ? heading.group(3) : heading.group(2);
                return Optional.of(
                        new Column(i, unit(unit, dimension), headings.get(i).strip()));
            }
        }
        return Optional.empty();
    }

    private static @Nullable Unit unit(@Nullable String written, Dimension dimension) {
        return written != null && QuantityReader.read("1 " + written.strip(), dimension) instanceof Reading.Read read
                ? read.quantity().unit().orElse(null)
                : null;
    }
}
