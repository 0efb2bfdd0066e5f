package org.brakewright.drawing.write;

import java.util.Locale;
import org.brakewright.drawing.lettering.Lettering;

/** Words in the ASCII of DXF R12: three signs of the trade have codes of their own, the rest is told by number. */
final class DxfWords {
    private DxfWords() {}

    /** Two percent signs in a row would begin a code: a space keeps those of the words apart. */
    static String of(String words) {
        var ascii = new StringBuilder();
        for (char letter : Lettering.printable(words).toCharArray()) {
            String sign = sign(letter);
            boolean code = sign.startsWith("%") && ascii.length() > 0 && ascii.charAt(ascii.length() - 1) == '%';
            ascii.append(code ? " " : "").append(sign);
        }
        return ascii.toString();
    }

    private static String sign(char letter) {
        return switch (letter) {
            case '\u00B0' -> "%%d";
            case '\u00B1' -> "%%p";
            case '\u2300', '\u00D8' -> "%%c";
            case '^' -> "^ ";
            default -> letter < 0x7F ? String.valueOf(letter) : String.format(Locale.ROOT, "\\U+%04X", (int) letter);
        };
    }
}
