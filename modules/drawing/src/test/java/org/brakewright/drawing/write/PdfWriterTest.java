package org.brakewright.drawing.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.brakewright.drawing.Demo;
import org.brakewright.drawing.Drawing;
import org.brakewright.drawing.Point;
import org.brakewright.drawing.Program;
import org.brakewright.drawing.Text;
import org.brakewright.drawing.page.Paper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfWriterTest {
    private static final Pattern WORD = Pattern.compile("xMin=\"([\\d.]+)\".*xMax=\"([\\d.]+)\".*>Hamburgefonts<");

    @TempDir
    Path folder;

    /** ISO 32000, 12.2, viewer preferences: None asks the print dialog for no scaling. */
    @Test
    void theViewerIsAskedNotToScale() throws Exception {
        try (PDDocument document = Loader.loadPDF(PdfWriter.write(Demo.plate(130, 150), Paper.A4))) {
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
        }
    }

    @Test
    void theSameDrawingGivesTheSameBytes() {
        assertThat(PdfWriter.write(Demo.plate(300, 300), Paper.A4))
                .isEqualTo(PdfWriter.write(Demo.plate(300, 300), Paper.A4));
    }

    @Test
    void theFontIsEmbedded() throws Exception {
        String fonts = Program.run("poppler-utils", List.of("pdffonts", write(Demo.plate(130, 150))));
        assertThat(fonts.lines().skip(2))
                .singleElement()
                .satisfies(font -> assertThat(font).contains("DejaVuSans").containsPattern("yes\\s+yes\\s+yes"));
    }

    @Test
    void everySheetSaysHowToPrintAndWhichTileItIs() throws Exception {
        String[] sheets = sheets(Demo.plate(300, 300));
        assertThat(sheets)
                .hasSize(5)
                .allSatisfy(sheet -> assertThat(sheet)
                        .contains(
                                "Print at 100 %, no fit-to-page;",
                                "measure the bars", "100 mm", "4 in", "D-0042", "2026-11-25"));
        assertThat(sheets[0]).contains("not to scale", "1 of 5: overview", "R1C1", "R2C2");
        assertThat(sheets[1]).contains("2 of 5: tile R1C1", "1:1, mm", "R1C1/R1C2 a", "R1C1/R2C1 b");
        assertThat(sheets[4]).contains("5 of 5: tile R2C2");
    }

    @Test
    void theStampIsOnEverySheetAndOnlyWhenAsked() throws Exception {
        assertThat(sheets(Demo.plate(300, 300).stamped("FORBIDDEN")))
                .hasSize(5)
                .allSatisfy(sheet -> assertThat(sheet).contains("FORBIDDEN"));
        assertThat(sheets(Demo.plate(300, 300))).noneMatch(sheet -> sheet.contains("FORBIDDEN"));
    }

    /** Our widths of words against those that poppler reads from the embedded font, to 0.1 mm. */
    @Test
    void wordsAreAsLongAsPopplerFindsThem() throws Exception {
        Text words = Text.of(new Point(0, 0), 10, "Hamburgefonts");
        String pdf = write(Drawing.of(Demo.title(), List.of(words)));
        Matcher box = WORD.matcher(Program.run("poppler-utils", List.of("pdftotext", "-bbox", pdf, "-")));
        assertThat(box.find()).isTrue();
        double points = Double.parseDouble(box.group(2)) - Double.parseDouble(box.group(1));
        assertThat(words.width()).isCloseTo(points * 25.4 / 72, within(0.1));
    }

    /** Control characters, a letter of no font and one beyond the first plane. */
    @Test
    void wordsTheFontCannotDrawDoNotStopIt() throws Exception {
        Text words = Text.of(new Point(0, 0), 5, "a\tb\uE123c\uD83D\uDE97d");
        assertThat(sheets(Drawing.of(Demo.title(), List.of(words)))[0]).contains("a b\uFFFDc\uFFFDd");
    }

    @Test
    void noDrawingIsNoFile() {
        assertThatThrownBy(() -> PdfWriter.write(List.of(), Paper.A4)).hasMessageContaining("drawings");
    }

    private String[] sheets(Drawing drawing) throws Exception {
        String text = Program.run("poppler-utils", List.of("pdftotext", "-raw", write(drawing), "-"));
        return Stream.of(text.strip().split("\f", -1))
                .map(sheet -> sheet.replaceAll("\\s+", " "))
                .toArray(String[]::new);
    }

    private String write(Drawing drawing) throws Exception {
        return Files.write(folder.resolve("drawing.pdf"), PdfWriter.write(drawing, Paper.A4))
                .toString();
    }
}
