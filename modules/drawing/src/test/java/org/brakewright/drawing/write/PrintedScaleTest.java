package org.brakewright.drawing.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.brakewright.drawing.Demo;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.page.Page;
import org.brakewright.drawing.page.Pages;
import org.brakewright.drawing.page.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What comes out on paper, measured in pixels of 1/600 in on the picture that poppler makes of every page. */
class PrintedScaleTest {
    /** 100 mm and 4 in at 600 dpi. */
    private static final double METRIC = 100 * Raster.PIXELS_PER_MM;

    private static final double INCHES = 4 * 600;

    /** A bar is 0.7 mm = 16.5 px wide: a stretch on fewer rows is something else. */
    private static final int LEAST_ROWS = 15;

    @TempDir
    Path folder;

    /** 130 x 150 fits on a sheet; 300 x 300 takes several of either paper. */
    @ParameterizedTest
    @CsvSource({"A4, 130, 150, 1", "LETTER, 130, 150, 1", "A4, 300, 300, 5", "LETTER, 300, 300, 5"})
    void everyBarOnEverySheetIsTrueWithinAPixel(Paper paper, double width, double height, int sheets) throws Exception {
        Drawing drawing = Demo.plate(width, height);
        List<Page> pages = Pages.of(drawing, paper);
        Path pdf = Files.write(folder.resolve("drawing.pdf"), PdfWriter.write(drawing, paper));
        assertThat(pages).hasSize(sheets);
        for (int page = 1; page <= sheets; page++) {
            Raster raster = Raster.of(pdf, page);
            assertThat((double) raster.width())
                    .isCloseTo(pages.get(page - 1).media().width() * Raster.PIXELS_PER_MM, within(1.0));
            assertThat((double) raster.height())
                    .isCloseTo(pages.get(page - 1).media().height() * Raster.PIXELS_PER_MM, within(1.0));
            assertBars(raster, false);
            assertBars(raster, true);
        }
    }

    /** The plate's level line is 120 mm long; it is 0.18 mm = 4 px wide. */
    @Test
    void theDrawingIsTrueWithinAPixel() throws Exception {
        Path pdf = Files.write(folder.resolve("drawing.pdf"), PdfWriter.write(Demo.plate(130, 150), Paper.A4));
        double expected = 120 * Raster.PIXELS_PER_MM;
        List<Integer> line = Raster.of(pdf, 1).stretches(false, (int) expected - 40, (int) expected + 40);
        assertThat(line)
                .hasSizeGreaterThan(3)
                .allSatisfy(run -> assertThat((double) run).isCloseTo(expected, within(1.0)));
    }

    /** All stretches from 97 to 105 mm belong to one of the two bars, and each is as long as its bar. */
    private static void assertBars(Raster raster, boolean upright) {
        List<Integer> runs =
                raster.stretches(upright, (int) (97 * Raster.PIXELS_PER_MM), (int) (105 * Raster.PIXELS_PER_MM));
        double between = (METRIC + INCHES) / 2;
        assertBar(runs.stream().filter(run -> run < between).toList(), METRIC);
        assertBar(runs.stream().filter(run -> run >= between).toList(), INCHES);
    }

    private static void assertBar(List<Integer> runs, double expected) {
        assertThat(runs)
                .hasSizeGreaterThanOrEqualTo(LEAST_ROWS)
                .allSatisfy(run -> assertThat((double) run).isCloseTo(expected, within(1.0)));
    }
}
