package org.brakewright.sheets.lines;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.brakewright.analysis.lines.Misfit;

/** The trade's words for what a line is made of. */
public final class LineWords {
    private static final Pattern UNIFIED = Pattern.compile("unf_(\\d+)_(\\d+)_(\\d+)");
    private static final Pattern METRIC = Pattern.compile("m(\\d+)x(\\d+)(?:_(\\d+))?");

    private LineWords() {}

    /** "3/8-24 UNF", "M10 x 1". */
    public static String thread(String key) {
        Matcher unified = UNIFIED.matcher(key);
        if (unified.matches()) {
            return unified.group(1) + "/" + unified.group(2) + "-" + unified.group(3) + " UNF";
        }
        Matcher metric = METRIC.matcher(key);
        if (metric.matches()) {
            return "M" + metric.group(1) + " x " + metric.group(2)
                    + (metric.group(3) == null ? "" : "." + metric.group(3));
        }
        return plain(key);
    }

    /** How an end is formed. */
    public static String form(String key) {
        return switch (key) {
            case "double_45" -> "double flare 45°";
            case "single_45" -> "single flare 45°";
            case "single_37" -> "single flare 37°, sleeve";
            case "convex" -> "convex flare, ISO 4038";
            case "iso_double" -> "double flare, ISO 13486";
            case "female" -> "socket";
            default -> plain(key);
        };
    }

    /** Why an end must not be screwed in. */
    public static String misfit(Misfit misfit) {
        return switch (misfit) {
            case CONE_ANGLE -> "cone angle differs";
            case CONVEX_SEAT -> "convex flare and seat do not pair";
            case ISO_AND_SAE -> "metric and inch double flare";
            case BANJO -> "banjo against a cone";
            case SOCKET -> "socket without its tube";
            case THREAD -> "threads differ";
            case THREAD_NEAR -> "nearly the same thread: it strips";
            case NUT_BORE -> "nut is bored for another tube";
            case SINGLE_45 -> "single flare on brake tube";
            case COMPRESSION -> "ferrule: not for brakes";
            case WALL -> "wall too thick to double-flare";
        };
    }

    /** A key as words: "hose_bracket" is "hose bracket". */
    public static String plain(String key) {
        return key.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
