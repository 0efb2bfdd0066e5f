package org.brakewright.drawing.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.brakewright.drawing.Program;

/** A page as poppler renders it, at 600 dpi, in gray. */
final class Raster {
    static final double PIXELS_PER_MM = 600 / 25.4;

    private final int width;
    private final int height;
    private final int start;
    private final byte[] bytes;

    private Raster(int width, int height, int start, byte[] bytes) {
        this.width = width;
        this.height = height;
        this.start = start;
        this.bytes = bytes;
    }

    /** Renders a page, counted from 1. */
    static Raster of(Path pdf, int page) throws IOException, InterruptedException {
        Path stem = pdf.resolveSibling("page");
        String number = Integer.toString(page);
        Program.run(
                "poppler-utils",
                List.of(
                        "pdftoppm",
                        "-r",
                        "600",
                        "-gray",
                        "-aaVector",
                        "no",
                        "-singlefile",
                        "-f",
                        number,
                        "-l",
                        number,
                        pdf.toString(),
                        stem.toString()));
        return read(Files.readAllBytes(pdf.resolveSibling("page.pgm")));
    }

    /** The head of a PGM file is three words and a number, each followed by one white character. */
    private static Raster read(byte[] bytes) {
        String head = new String(bytes, 0, 40, StandardCharsets.ISO_8859_1);
        String[] words = head.split("\\s", 5);
        assertThat(words[0]).isEqualTo("P5");
        assertThat(words[3]).isEqualTo("255");
        int start = words[0].length() + words[1].length() + words[2].length() + words[3].length() + 4;
        return new Raster(Integer.parseInt(words[1]), Integer.parseInt(words[2]), start, bytes);
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** Lengths of all dark stretches between two lengths, in pixels, row by row, or column by column when upright. */
    List<Integer> stretches(boolean upright, int least, int most) {
        var found = new ArrayList<Integer>();
        for (int i = 0; i < (upright ? width : height); i++) {
            int run = 0;
            for (int j = 0; j <= (upright ? height : width); j++) {
                if (j < (upright ? height : width) && (upright ? dark(i, j) : dark(j, i))) {
                    run++;
                } else {
                    if (run >= least && run <= most) {
                        found.add(run);
                    }
                    run = 0;
                }
            }
        }
        return found;
    }

    private boolean dark(int x, int y) {
        return (bytes[start + y * width + x] & 0xFF) < 128;
    }
}
