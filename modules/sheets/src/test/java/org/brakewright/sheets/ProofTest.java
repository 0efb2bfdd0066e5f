package org.brakewright.sheets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.brakewright.drawing.page.Page;
import org.brakewright.drawing.page.Pages;
import org.brakewright.drawing.page.Paper;
import org.brakewright.drawing.write.DxfWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sheet and tile of every example, measured with poppler at 600 dpi and read back with ezdxf. */
class ProofTest {
    private static final List<Paper> PAPERS = List.of(Paper.A4, Paper.LETTER);
    private static final double PIXELS_PER_MM = 600 / 25.4;

    /** 100 mm and 4 in at 600 dpi. */
    private static final double METRIC = 100 * PIXELS_PER_MM;

    private static final double INCHES = 4 * 600;

    /** A bar is 0.7 mm = 16.5 px wide. */
    private static final int LEAST_ROWS = 15;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"heavy-tourer", "hill-climber", "shop-pickup"})
    void everyCheckBarIsTrueWithinAPixelAndEveryDxfIsClean(String car) throws Exception {
        List<Sheet> sheets = Examples.sheets(Examples.text(car));
        for (Map.Entry<String, byte[]> file : SheetFiles.of(sheets, PAPERS).entrySet()) {
            Files.write(folder.resolve(file.getKey()), file.getValue());
        }
        List<String> proof = proof();
        for (Sheet sheet : sheets) {
            assertThat(proof).contains("dxf " + sheet.key() + ".dxf 0 0");
            for (Paper paper : PAPERS) {
                assertPages(sheet, paper, proof);
            }
        }
    }

    /** Holes and bolts of the example's build file, across counted to the left, a half millimetre of clearance. */
    @Test
    void theFirewallsHolesAreInItsDxfWhereTheBuildFilePutsThem() throws Exception {
        Sheet firewall = Examples.sheet(Examples.text("hill-climber"), "firewall");
        Files.writeString(folder.resolve("firewall.dxf"), DxfWriter.write(firewall.drawing()));
        assertThat(proof().stream().filter(line -> line.startsWith("hole")))
                .containsExactlyInAnyOrder(
                        "hole firewall.dxf 0.0000 130.0000 50.0000",
                        "hole firewall.dxf 30.0000 0.0000 30.0000",
                        "hole firewall.dxf -30.0000 0.0000 30.0000",
                        "hole firewall.dxf 75.0000 -50.0000 8.5000",
                        "hole firewall.dxf -75.0000 -50.0000 8.5000",
                        "hole firewall.dxf -75.0000 50.0000 8.5000",
                        "hole firewall.dxf 75.0000 50.0000 8.5000");
    }

    private void assertPages(Sheet sheet, Paper paper, List<String> proof) {
        String file = SheetFiles.pdf(sheet.key(), paper);
        List<Page> pages = Pages.of(sheet.drawings(), paper);
        assertThat(proof.stream().filter(line -> line.startsWith("page " + file + " ")))
                .hasSameSizeAs(pages);
        for (int i = 0; i < pages.size(); i++) {
            String number = file + " " + (i + 1) + " ";
            assertSize(pages.get(i), proof, "page " + number);
            assertBars(proof, "bar " + number + "across ");
            assertBars(proof, "bar " + number + "up ");
        }
    }

    private static void assertSize(Page page, List<String> proof, String head) {
        double[] size = numbers(proof, head).getFirst();
        assertThat(size[0]).isCloseTo(page.media().width() * PIXELS_PER_MM, within(1.0));
        assertThat(size[1]).isCloseTo(page.media().height() * PIXELS_PER_MM, within(1.0));
    }

    private static void assertBars(List<String> proof, String head) {
        List<double[]> stretches = numbers(proof, head);
        assertBar(stretches, METRIC, head);
        assertBar(stretches, INCHES, head);
        assertThat(stretches)
                .as(head)
                .allSatisfy(each -> assertThat(Math.min(Math.abs(each[0] - METRIC), Math.abs(each[0] - INCHES)))
                        .isLessThanOrEqualTo(1));
    }

    private static void assertBar(List<double[]> stretches, double length, String head) {
        double rows = stretches.stream()
                .filter(each -> Math.abs(each[0] - length) <= 1)
                .mapToDouble(each -> each[1])
                .sum();
        assertThat(rows).as(head + length).isGreaterThanOrEqualTo(LEAST_ROWS);
    }

    private static List<double[]> numbers(List<String> proof, String head) {
        return proof.stream()
                .filter(line -> line.startsWith(head))
                .map(line -> line.substring(head.length()).split(" ", -1))
                .map(words -> new double[] {Double.parseDouble(words[0]), Double.parseDouble(words[1])})
                .toList();
    }

    private List<String> proof() throws Exception {
        Path script = Path.of(
                Objects.requireNonNull(getClass().getResource("proof.py")).toURI());
        Process process = new ProcessBuilder("/usr/bin/python3", script.toString(), folder.toString())
                .redirectErrorStream(true)
                .start();
        String printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor())
                .as("needs python3-ezdxf and poppler-utils: " + printed)
                .isZero();
        return printed.lines().toList();
    }
}
