package org.brakewright.drawing.lettering;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** DejaVu Sans, the font that is shipped: heights are those of capital letters, as drawings give them. */
public final class Lettering {
    /** Name of the font as programs know it. */
    public static final String FAMILY = "DejaVu Sans";

    private static final int CHARACTERS = 0x10000;
    private static final char REPLACEMENT = '\uFFFD';

    /** Height of a capital letter and advance of every character, in font sizes; -1 for what the font lacks. */
    private static final class Metrics {
        private final double capital;
        private final double[] advances;

        Metrics(double capital, double[] advances) {
            this.capital = capital;
            this.advances = advances;
        }
    }

    private static final Metrics METRICS = read();

    private Lettering() {}

    /** The font file, to be closed by the caller. */
    public static InputStream open() {
        return Objects.requireNonNull(Lettering.class.getResourceAsStream("DejaVuSans.ttf"), "font is not packed");
    }

    /** The font size that makes capital letters {@code height} high, in the same unit. */
    public static double size(double height) {
        return height / METRICS.capital;
    }

    /** Length of words whose capital letters are {@code height} high, in the same unit. */
    public static double width(String words, double height) {
        return printable(words)
                        .chars()
                        .mapToDouble(letter -> METRICS.advances[letter])
                        .sum()
                * size(height);
    }

    /** The words with a space for every control character, and a replacement sign for what the font cannot draw. */
    public static String printable(String words) {
        var printable = new StringBuilder();
        words.codePoints().forEach(letter -> printable.append(printable(letter)));
        return printable.toString();
    }

    private static char printable(int letter) {
        if (Character.isISOControl(letter)) {
            return ' ';
        }
        return letter < CHARACTERS && METRICS.advances[letter] >= 0 ? (char) letter : REPLACEMENT;
    }

    private static Metrics read() {
        try (InputStream stream = open();
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(stream))) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            double em = font.getUnitsPerEm();
            double[] advances = new double[CHARACTERS];
            for (int letter = 0; letter < CHARACTERS; letter++) {
                int glyph = glyphs.getGlyphId(letter);
                advances[letter] = glyph == 0 ? -1 : font.getAdvanceWidth(glyph) / em;
            }
            return new Metrics(top(font, glyphs.getGlyphId('H')) / em, advances);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the font that is shipped", e);
        }
    }

    /** The table that should tell the height of capitals is too old in this font: 0. */
    private static double top(TrueTypeFont font, int glyph) throws IOException {
        return font.getGlyph().getGlyph(glyph).getBoundingBox().getUpperRightY();
    }
}
