package org.brakewright.buildfile;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import org.brakewright.buildfile.LogColumns.Column;
import org.brakewright.model.heat.Recording;
import org.brakewright.model.heat.Recording.Sample;
import org.brakewright.quantity.Unit;

/** Takes one line of values after the other, and refuses what cannot have been driven. */
final class LogRows {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d{1,18}([.,]\\d*)?|[.,]\\d+)([eE][+-]?\\d{1,2})?");

    /** 500 km/h, as for a point written in the build file. */
    private static final double FASTEST = 140;

    private static final double LONGEST = 36_000;
    private static final String NONE = "no value";

    private final LogColumns columns;
    private final Refusing refusing;
    private final List<Sample> samples = new ArrayList<>();
    private double start = Double.NaN;
    private double before;

    /** Where faults go. */
    @FunctionalInterface
    interface Refusing {
        void refuse(long line, String value, String message, String allowed);
    }

    LogRows(LogColumns columns, Refusing refusing) {
        this.columns = columns;
        this.refusing = refusing;
    }

    /** All lines that hold numbers which can have been driven; in the order of time when nothing was refused. */
    List<Sample> samples() {
        return samples;
    }

    void take(CsvRecord line) {
        OptionalDouble time = number(line, columns.time());
        OptionalDouble speed = number(line, columns.speed());
        if (time.isEmpty() || speed.isEmpty() || !driven(line, speed.getAsDouble())) {
            return;
        }
        if (Double.isNaN(start)) {
            start = time.getAsDouble();
        } else {
            follows(line, time.getAsDouble());
        }
        before = time.getAsDouble();
        samples.add(new Sample(time.getAsDouble(), speed.getAsDouble()));
    }

    private OptionalDouble number(CsvRecord line, Column column) {
        String written = column.index() < line.getFieldCount()
                ? line.getField(column.index()).strip()
                : "";
        if (!NUMBER.matcher(written).matches()) {
            String message =
                    "`" + column.heading() + "` has " + (written.isEmpty() ? NONE : "a value that is no number");
            refusing.refuse(line.getStartingLineNumber(), written, message, "a number without its unit");
            return OptionalDouble.empty();
        }
        Unit unit = column.unit();
        double number = Double.parseDouble(written.replace(',', '.'));
        return OptionalDouble.of(unit == null ? number : unit.toSi(number));
    }

    private boolean driven(CsvRecord line, double speed) {
        if (speed >= 0 && speed <= FASTEST) {
            return true;
        }
        String message = speed < 0
                ? "the speed is below zero, and no brake takes heat from a car that rolls back"
                : "the speed is beyond that of any car";
        refusing.refuse(
                line.getStartingLineNumber(),
                line.getField(columns.speed().index()),
                message,
                "0 to " + FASTEST + " m/s in the unit of the heading");
        return false;
    }

    /** Held against the line before alone, so that one wrong line is one or two faults and not all that follow. */
    private void follows(CsvRecord line, double time) {
        double step = time - before;
        long at = line.getStartingLineNumber();
        String written = line.getField(columns.time().index());
        if (step <= 0) {
            refusing.refuse(at, written, "the lines are not in the order of time", "later than the line before");
        } else if (step > Recording.LONGEST_GAP) {
            refusing.refuse(
                    at,
                    written,
                    "the log has a gap of " + Math.round(10 * step) / 10.0 + " s: nobody knows what happened in it",
                    "at most 5 s after the line before, or two logs");
        }
        if (time - start > LONGEST) {
            refusing.refuse(at, written, "the log is longer than ten hours", "a log of one drive");
        }
    }
}
