package org.brakewright.buildfile;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.brakewright.model.heat.LogFile;
import org.brakewright.model.heat.Recording;
import org.jspecify.annotations.Nullable;

/**
 * Reads what a logger wrote: lines of values parted by comma, semicolon or tab, the headings with their units first,
 * perhaps below some lines about the logger. Whatever the file, the answer is a recording or its faults by line.
 */
final class LogReader {
    /** Most bytes of a log file: some hours at twenty samples a second. */
    static final int LARGEST_BYTES = 8 << 20;

    private static final String TIME = "time";
    private static final String SPEED = "speed";
    private static final int LAST_HEADING = 100;
    private static final int MOST_FAULTS = 20;
    private static final char[] SEPARATORS = {',', ';', '\t'};

    private final String timeName;
    private final String speedName;
    private final List<LogFault> faults = new ArrayList<>();
    private int more;

    LogReader(LogFile file) {
        timeName = file.timeColumn() == null ? TIME : file.timeColumn();
        speedName = file.speedColumn() == null ? SPEED : file.speedColumn();
    }

    /** What is wrong with the file; the first of very many. */
    List<LogFault> faults() {
        List<LogFault> all = new ArrayList<>(faults);
        if (more > 0) {
            all.add(new LogFault(0, "", more + " more faults of the same file are not listed", "a clean log"));
        }
        return all;
    }

    /** The recording of a file; null when it has faults. */
    @Nullable
    Recording read(ByteBuffer bytes) {
        if (bytes.remaining() > LARGEST_BYTES) {
            refuse(0, "", "the log is larger than " + (LARGEST_BYTES >> 20) + " MiB", "a log of one drive");
            return null;
        }
        String text = BuildFile.withoutMark(text(bytes));
        for (char separator : SEPARATORS) {
            List<CsvRecord> lines = lines(text, separator);
            for (int i = 0; i < Math.min(LAST_HEADING, lines.size()); i++) {
                Optional<LogColumns> columns = LogColumns.in(lines.get(i), timeName, speedName);
                if (columns.isPresent()) {
                    return rows(columns.get(), lines.subList(i + 1, lines.size()));
                }
            }
        }
        refuse(
                0,
                "",
                "no line has the headings `" + timeName + "` and `" + speedName + "`",
                "a line of headings with their units, such as `time [s],speed [km/h]`, or time_column and"
                        + " speed_column with the headings that stand there");
        return null;
    }

    private @Nullable Recording rows(LogColumns columns, List<CsvRecord> lines) {
        if (!measured(columns)) {
            return null;
        }
        LogRows rows = new LogRows(columns, this::refuse);
        lines.forEach(rows::take);
        if (rows.samples().size() < 2 && faults.isEmpty()) {
            refuse(columns.line(), "", "a log of less than two lines of values tells nothing", "two lines at least");
        }
        return faults.isEmpty() ? new Recording(rows.samples()) : null;
    }

    private boolean measured(LogColumns columns) {
        if (columns.time().unit() == null) {
            String shown = columns.time().heading();
            refuse(columns.line(), shown, "the heading of the time says no unit of time", timeName + " [s]");
        }
        if (columns.speed().unit() == null) {
            String shown = columns.speed().heading();
            String allowed = speedName + " [km/h], [mph] or [m/s]";
            refuse(columns.line(), shown, "the heading of the speed says no unit of speed", allowed);
        }
        return faults.isEmpty();
    }

    private void refuse(long line, String value, String message, String allowed) {
        if (faults.size() < MOST_FAULTS) {
            faults.add(new LogFault(line, Faults.shown(value), message, allowed));
        } else {
            more++;
        }
    }

    /** The lines as far as they can be parted: what stands behind a quote that never ends is no value. */
    private static List<CsvRecord> lines(String text, char separator) {
        List<CsvRecord> lines = new ArrayList<>();
        try {
            CsvReader.builder()
                    .fieldSeparator(separator)
                    .allowMissingFields(true)
                    .allowExtraFields(true)
                    .commentStrategy(CommentStrategy.SKIP)
                    .ofCsvRecord(text)
                    .forEach(lines::add);
        } catch (CsvParseException e) {
            // a field longer than any value: the lines so far say enough to find the fault
            return lines;
        }
        return lines;
    }

    /** Only figures and headings matter, so that old alphabets of loggers do no harm. */
    private static String text(ByteBuffer bytes) {
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(bytes.duplicate()).toString();
        } catch (CharacterCodingException e) {
            return StandardCharsets.ISO_8859_1.decode(bytes.duplicate()).toString();
        }
    }
}
