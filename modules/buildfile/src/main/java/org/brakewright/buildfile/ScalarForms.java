package org.brakewright.buildfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.brakewright.buildfile.Node.Style;

/** The ways in which YAML can write one text, the most readable first; which of them holds at a place is tried out. */
final class ScalarForms {
    private ScalarForms() {}

    /**
     * All forms of a text.
     *
     * @param value the text that must be read back
     * @param before how the value was written before; kept where possible
     * @param indent blanks before the key that it belongs to
     * @param lineBreak how the file ends its lines
     */
    static List<String> of(String value, Style before, int indent, String lineBreak) {
        List<String> forms = new ArrayList<>();
        if (value.contains("\n")) {
            forms.add(block(value, indent + 2, lineBreak));
        } else {
            forms.addAll(before == Style.SINGLE_QUOTED ? List.of(single(value)) : List.of());
            forms.addAll(before == Style.DOUBLE_QUOTED ? List.of(doubled(value)) : List.of());
            forms.add(value);
            forms.add(single(value));
        }
        forms.add(doubled(value));
        return forms;
    }

    private static String single(String value) {
        return "'" + value.replace("'", "''") + "'";
    }

    private static String block(String value, int indent, String lineBreak) {
        String body = value.stripTrailing();
        String ending = value.substring(body.length());
        String header = ending.isEmpty() ? "|-" : ending.equals("\n") ? "|" : "|+";
        StringBuilder form = new StringBuilder(header);
        for (String line : body.split("\n", -1)) {
            form.append(lineBreak)
                    .append(line.isEmpty() ? "" : " ".repeat(indent))
                    .append(line);
        }
        return form.toString();
    }

    private static String doubled(String value) {
        StringBuilder form = new StringBuilder("\"");
        value.chars().forEach(sign -> form.append(escaped((char) sign)));
        return form.append('"').toString();
    }

    private static String escaped(char sign) {
        return switch (sign) {
            case '"' -> "\\\"";
            case '\\' -> "\\\\";
            case '\n' -> "\\n";
            case '\r' -> "\\r";
            case '\t' -> "\\t";
            default -> plain(sign) ? String.valueOf(sign) : String.format(Locale.ROOT, "\\u%04X", (int) sign);
        };
    }

    private static boolean plain(char sign) {
        return (sign >= ' ' && sign < 0x7F) || (sign >= 0xA0 && sign < 0x2028) || (sign > 0x2029 && sign < 0xFEFF);
    }
}
